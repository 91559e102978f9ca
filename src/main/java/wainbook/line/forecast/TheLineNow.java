package wainbook.line.forecast;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.history.Basis;

/**
 * The line as it stands, its times from the record: what the forecast is made of.
 *
 * @param posts the stages in the order of the line
 * @param vehicles in the order of the line: those on it, the first in front; those in a bay; those in front of it, donors that are
 *     here before those that are not, each as they are promised
 */
public record TheLineNow(Calendar calendar, PastTimes past, List<Post> posts, List<OnHand> vehicles) {

    /** A stage of the line with its stations side by side. */
    public record Post(String stage, String title, List<String> stations) {
        public Post {
            stations = List.copyOf(stations);
        }
    }

    public TheLineNow {
        posts = List.copyOf(posts);
        List<String> order = posts.stream().map(Post::stage).toList();
        vehicles = Stream.of(
                        vehicles.stream()
                                .filter(one -> one.doing().onLine())
                                .sorted(Comparator.comparing((OnHand one) -> -at(order, one))
                                        .thenComparing(OnHand::doing)
                                        .thenComparing(one -> -one.minutes())
                                        .thenComparing(OnHand::order)),
                        vehicles.stream()
                                .filter(one -> one.doing() == OnHand.Doing.BAY)
                                .sorted(Comparator.comparing(OnHand::order)),
                        vehicles.stream()
                                .filter(one -> one.doing().inFront())
                                .sorted(Comparator.comparing((OnHand one) -> one.doing() == OnHand.Doing.ORDERED)
                                        .thenComparing(OnHand::promisedOn)
                                        .thenComparing(OnHand::order)))
                .flatMap(some -> some)
                .toList();
    }

    private static int at(List<String> order, OnHand vehicle) {
        return vehicle.stage().map(order::indexOf).orElse(-1);
    }

    public Line line() {
        return new Line(
                calendar.working(),
                posts.stream().map(this::stage).toList(),
                vehicles.stream().map(this::vehicle).toList(),
                List.of());
    }

    /** What the work that a vehicle still has before it rests on, stage by stage. */
    public List<Basis> basis(OnHand vehicle) {
        int first = vehicle.doing().inFront() ? 0 : Math.max(0, index(vehicle));
        return posts.stream()
                .skip(first)
                .filter(post -> vehicle.plannedMinutes().containsKey(post.stage()))
                .map(post -> past.work(
                                vehicle.kind(),
                                post.stage(),
                                vehicle.plannedMinutes().get(post.stage()))
                        .basis())
                .toList();
    }

    /** More vehicles than stations can stand at a stage after its stations were set anew. */
    private Stage stage(Post post) {
        WorkingTime working = calendar.working(post.stations());
        int there = (int) vehicles.stream()
                .filter(one -> one.doing().onLine())
                .filter(one -> one.stage().filter(post.stage()::equals).isPresent())
                .count();
        return Stage.of(post.stage(), working)
                .withStations(Math.max(1, Math.max(there, post.stations().size())))
                .withSignature(working, past.signature(post.stage()))
                .withRefusal(past.refusal(post.stage()), past.again());
    }

    private Vehicle vehicle(OnHand one) {
        Vehicle vehicle = Vehicle.of(
                        one.order(),
                        whereabouts(one),
                        posts.stream().map(post -> visit(one, post)).toList())
                .withPace(past.pace(one.order()))
                .promisedFor(calendar.endOf(one.promisedOn()));
        return one.holds().stream()
                .reduce((some, other) ->
                        some.stopsWork() == other.stopsWork() ? later(some, other) : some.stopsWork() ? some : other)
                .map(open -> vehicle.withHold(
                        new Hold(open.stopsWork(), new Hold.AsBefore(past.hold(), open.openMinutes()))))
                .orElse(vehicle);
    }

    /** Of two holds the one that was put on later is likely to stand longer. */
    private static OnHand.OpenHold later(OnHand.OpenHold one, OnHand.OpenHold other) {
        return one.openMinutes() < other.openMinutes() ? one : other;
    }

    private Visit visit(OnHand vehicle, Post post) {
        Integer planned = vehicle.plannedMinutes().get(post.stage());
        return planned == null
                ? Visit.passingThrough()
                : Visit.of(past.work(vehicle.kind(), post.stage(), planned).minutes());
    }

    private Whereabouts whereabouts(OnHand one) {
        int stage = Math.max(0, index(one));
        return switch (one.doing()) {
            case SIGNED -> new Whereabouts.Signed(stage);
            case UNSIGNED -> new Whereabouts.Unsigned(stage, one.minutes());
            case WORK -> new Whereabouts.AtWork(stage, one.minutes());
            case BAY -> new Whereabouts.InBay(past.bay(), one.minutes(), OptionalInt.of(stage));
            case ACCEPTED, SURVEY, ORDERED -> new Whereabouts.Waiting(0);
        };
    }

    private int index(OnHand vehicle) {
        return IntStream.range(0, posts.size())
                .filter(i ->
                        vehicle.stage().filter(posts.get(i).stage()::equals).isPresent())
                .findFirst()
                .orElse(-1);
    }
}
