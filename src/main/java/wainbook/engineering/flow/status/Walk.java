package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntFunction;

/**
 * From a station that waits to the one that it waits for in the end: a blocked one looks ahead over blocked ones, a starved one back
 * over starved ones, to the first that is not. Where several stand side by side, the one whose vehicle will probably leave first, by
 * what it is doing; no forecast is asked.
 */
public final class Walk {

    /** The cause of a starved station when every station before it is starved too: nothing is released. */
    public static final int RELEASE = -1;

    private static final List<Doing> LEAVING_FIRST = List.of(
            Doing.BLOCKED,
            Doing.AWAITING_SIGN_OFF,
            Doing.WORKING,
            Doing.OVER_TAKT,
            Doing.HELD,
            Doing.DOWN,
            Doing.OFF_SHIFT,
            Doing.STARVED);

    private final IntFunction<Post> line;

    private Walk(IntFunction<Post> line) {
        this.line = line;
    }

    /**
     * A station among its neighbours; stations are counted from 0.
     *
     * @param vehicle whether one stands there
     * @param next where that vehicle goes next, to any of them; none at the end of its way
     * @param before where vehicles that come here can come from
     */
    public record Post(Doing doing, boolean vehicle, List<Integer> next, List<Integer> before) {
        public Post {
            next = List.copyOf(next);
            before = List.copyOf(before);
        }

        private boolean comes(int to) {
            return !vehicle || next.contains(to);
        }
    }

    /**
     * @return the station that is the cause: the waiting one itself where its vehicle could move on, and {@link #RELEASE} where nothing
     *     comes; empty if it does not wait
     */
    public static OptionalInt cause(IntFunction<Post> line, int station) {
        Doing doing = line.apply(station).doing();
        if (!doing.waits()) {
            return OptionalInt.empty();
        }
        var walk = new Walk(line);
        return OptionalInt.of(doing == Doing.BLOCKED ? walk.ahead(station) : walk.behind(station));
    }

    /** Of stations in one row. */
    public static OptionalInt cause(List<Doing> row, int station) {
        return cause(
                at -> new Post(
                        row.get(at),
                        row.get(at) != Doing.STARVED,
                        at + 1 < row.size() ? List.of(at + 1) : List.of(),
                        at > 0 ? List.of(at - 1) : List.of()),
                station);
    }

    private int ahead(int blocked) {
        Set<Integer> seen = new HashSet<>();
        int at = blocked;
        while (seen.add(at)) {
            List<Integer> next = line.apply(at).next();
            if (next.isEmpty() || next.stream().anyMatch(to -> doing(to) == Doing.STARVED)) {
                return at;
            }
            OptionalInt cause =
                    first(next.stream().filter(to -> doing(to) != Doing.BLOCKED).toList());
            if (cause.isPresent()) {
                return cause.getAsInt();
            }
            at = next.get(0);
        }
        return at;
    }

    private int behind(int starved) {
        Set<Integer> seen = new HashSet<>(Set.of(starved));
        List<Integer> level = List.of(starved);
        while (!level.isEmpty()) {
            var causes = new ArrayList<Integer>();
            var further = new ArrayList<Integer>();
            for (int to : level) {
                for (int from : line.apply(to).before()) {
                    Post post = line.apply(from);
                    if (seen.add(from)) {
                        boolean over = post.doing() == Doing.STARVED || !post.comes(to);
                        (over ? further : causes).add(from);
                    }
                }
            }
            OptionalInt cause = first(causes);
            if (cause.isPresent()) {
                return cause.getAsInt();
            }
            level = further;
        }
        return RELEASE;
    }

    private Doing doing(int station) {
        return line.apply(station).doing();
    }

    /** Of equal ones the first. */
    private OptionalInt first(List<Integer> stations) {
        return stations.stream().min(Comparator.comparing(station -> LEAVING_FIRST.indexOf(doing(station)))).stream()
                .mapToInt(station -> station)
                .findFirst();
    }
}
