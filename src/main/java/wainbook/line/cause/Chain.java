package wainbook.line.cause;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wainbook.line.station.StationState;

/**
 * Who a waiting station waits for in the end. Blocked: forward over blocked stations to the first that is not. Starved: back
 * over empty stations to the first vehicle.
 */
public record Chain(Function<String, Post> posts) {

    /**
     * A station among its neighbours.
     *
     * @param taken whether a vehicle stands there
     * @param next the stations that the vehicle goes to next, one of them; none at the end of its route
     * @param before the stations that vehicles come from
     */
    public record Post(String station, StationState state, boolean taken, List<String> next, List<String> before) {
        public Post {
            next = List.copyOf(next);
            before = List.copyOf(before);
        }
    }

    /** The station that is the cause; empty where the way is free, nothing comes, or the station does not wait. */
    public Optional<String> cause(String station) {
        Post post = posts.apply(station);
        return switch (post.state()) {
            case BLOCKED -> ahead(post);
            case STARVED -> behind(post);
            case WORKING, OVER_TAKT, HELD, AWAITING_SIGN_OFF, DOWN, OFF_SHIFT -> Optional.empty();
        };
    }

    private Optional<String> ahead(Post blocked) {
        Set<String> seen = new HashSet<>();
        Post post = blocked;
        while (seen.add(post.station())) {
            List<Post> next = post.next().stream().map(posts).toList();
            if (next.isEmpty() || next.stream().anyMatch(other -> !other.taken())) {
                return post.equals(blocked) ? Optional.empty() : Optional.of(post.station());
            }
            Optional<Post> cause = next.stream()
                    .filter(other -> other.state() != StationState.BLOCKED)
                    .findFirst();
            if (cause.isPresent()) {
                return cause.map(Post::station);
            }
            post = next.get(0);
        }
        return Optional.of(post.station());
    }

    private Optional<String> behind(Post starved) {
        Set<String> seen = new HashSet<>(Set.of(starved.station()));
        List<Post> level = List.of(starved);
        while (!level.isEmpty()) {
            var before = new ArrayList<Post>();
            level.stream()
                    .flatMap(post -> post.before().stream())
                    .filter(seen::add)
                    .map(posts)
                    .forEach(before::add);
            Optional<Post> cause = before.stream().filter(Post::taken).findFirst();
            if (cause.isPresent()) {
                return cause.map(Post::station);
            }
            level = before;
        }
        return Optional.empty();
    }
}
