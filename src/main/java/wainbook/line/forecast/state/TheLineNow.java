package wainbook.line.forecast.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.Stop;

/**
 * The line as it stands, its times from the record: what the forecast is made of.
 *
 * @param posts the stages in the order of the line
 * @param moves the times of the day at which the line moves
 * @param entry by which rule those in front of the line come onto it
 * @param vehicles in the order of the line: those behind it; those on it, the first in front; those in a bay; those in front of it in
 *     the order given
 * @param after what comes after the line
 */
public record TheLineNow(
        Calendar calendar,
        PastTimes past,
        MoveTimes moves,
        EntryRule entry,
        List<Post> posts,
        List<OnHand> vehicles,
        After after) {

    /** A stage of the line with its stations side by side. */
    public record Post(String stage, String title, List<String> stations) {
        public Post {
            stations = List.copyOf(stations);
        }
    }

    /** Of several stops one counts: one that stops work before others, a hold before the rest, then the one begun last. */
    private static final Comparator<Stop.Open> LONGEST_LAST = Comparator.comparing(Stop.Open::stopsWork)
            .thenComparing(stop -> stop.sort() == Stop.HOLD)
            .thenComparing(stop -> -stop.openMinutes());

    public TheLineNow {
        posts = List.copyOf(posts);
        List<String> order = posts.stream().map(Post::stage).toList();
        vehicles = Stream.of(
                        vehicles.stream()
                                .filter(one -> one.doing() == OnHand.Doing.AFTER)
                                .sorted(Comparator.comparing(OnHand::since).thenComparing(OnHand::order)),
                        vehicles.stream()
                                .filter(one -> one.doing().onLine())
                                .sorted(Comparator.comparing((OnHand one) -> -at(order, one))
                                        .thenComparing(OnHand::doing)
                                        .thenComparing(one -> -one.minutes())
                                        .thenComparing(OnHand::order)),
                        vehicles.stream()
                                .filter(one -> one.doing() == OnHand.Doing.BAY)
                                .sorted(Comparator.comparing(OnHand::order)),
                        vehicles.stream().filter(one -> one.doing().inFront()))
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
                after.appointments(calendar),
                calendar.pulses(moves));
    }

    /** The same with other vehicles, those in front of the line in the order given. */
    public TheLineNow with(List<OnHand> others) {
        return new TheLineNow(calendar, past, moves, entry, posts, others, after);
    }

    /** The same with one vehicle as given. */
    public TheLineNow with(OnHand changed) {
        return with(vehicles.stream()
                .map(one -> one.order().equals(changed.order()) ? changed : one)
                .toList());
    }

    /** Those in front of the line, in their order of entry. */
    public List<OnHand> waiting() {
        return vehicles.stream().filter(one -> one.doing().inFront()).toList();
    }

    public Optional<OnHand> vehicle(String order) {
        return vehicles.stream().filter(one -> one.order().equals(order)).findFirst();
    }

    /** The next stage on a vehicle's way; empty behind the last. */
    public Optional<String> stageAfter(OnHand vehicle) {
        return posts.stream()
                .map(Post::stage)
                .skip(index(vehicle) + 1L)
                .filter(vehicle.plannedMinutes()::containsKey)
                .findFirst();
    }

    /** What the work that a vehicle still has before it rests on, stage by stage. */
    public List<Basis> basis(OnHand vehicle) {
        if (vehicle.doing() == OnHand.Doing.AFTER) {
            return List.of();
        }
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
                .stood(calendar.stood(moves, one.since()))
                .promisedFor(calendar.endOf(one.promisedOn()))
                .booked(after.booked(one.order(), calendar));
        return one.stops().stream()
                .max(LONGEST_LAST)
                .map(open -> vehicle.withHold(
                        new Hold(open.stopsWork(), new Hold.AsBefore(past.stop(open.sort()), open.openMinutes()))))
                .orElse(vehicle);
    }

    private Visit visit(OnHand vehicle, Post post) {
        Integer planned = vehicle.plannedMinutes().get(post.stage());
        return planned == null
                ? Visit.passingThrough()
                : vehicle.needs()
                        .heeded(
                                Visit.of(past.work(vehicle.kind(), post.stage(), planned)
                                        .minutes()),
                                post,
                                calendar,
                                isDone(vehicle, post));
    }

    private static boolean isDone(OnHand vehicle, Post post) {
        return (vehicle.doing() == OnHand.Doing.UNSIGNED || vehicle.doing() == OnHand.Doing.SIGNED)
                && vehicle.stage().filter(post.stage()::equals).isPresent();
    }

    private Whereabouts whereabouts(OnHand one) {
        int stage = Math.max(0, index(one));
        return switch (one.doing()) {
            case AFTER -> new Whereabouts.BehindTheLine(after.next(one.order()), 0);
            case SIGNED -> new Whereabouts.Signed(stage);
            case UNSIGNED -> new Whereabouts.Unsigned(stage, one.minutes());
            case WORK -> new Whereabouts.AtWork(stage, one.minutes());
            case BAY -> new Whereabouts.InBay(past.stop(Stop.BAY), one.minutes(), OptionalInt.of(stage));
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
