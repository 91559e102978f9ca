package wainbook.engineering.flow.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/** Lines of every sort, seeded. */
final class RandomLines {

    static final WorkingTime DAYS = days(0, 120);

    private RandomLines() {}

    /** From day to day 07:00 to 12:00 and 12:30 to 15:30, the origin at 07:00. */
    static WorkingTime days(int from, int to) {
        var shifts = new ArrayList<Interval>();
        for (int day = from; day < to; day++) {
            shifts.add(new Interval(day * 1440.0, day * 1440.0 + 300));
            shifts.add(new Interval(day * 1440.0 + 330, day * 1440.0 + 510));
        }
        return WorkingTime.of(shifts);
    }

    /** Times that vary, gates that wait and are refused, one calendar. */
    static Line varying(SplittableRandom random) {
        int count = random.nextInt(2, 6);
        List<Stage> stages = IntStream.range(0, count)
                .mapToObj(one -> Stage.of("S" + one, DAYS)
                        .withStations(random.nextInt(1, 3))
                        .withPlacesAfter(random.nextInt(0, 2))
                        .withTransport(random.nextInt(0, 10))
                        .withSignature(
                                DAYS,
                                Minutes.Drawn.of(
                                        random.doubles(12, 1, 30).boxed().toList()))
                        .withRefusal(0.1, new Lognormal(20, 0.3)))
                .toList();
        return line(
                random,
                stages,
                () -> Visit.of(
                        random.nextBoolean()
                                ? Lognormal.ofMean(random.nextDouble(40, 120), 0.3)
                                : Minutes.Drawn.of(
                                        random.doubles(20, 40, 120).boxed().toList())));
    }

    /** Certain times, each stage and its signers with hours and down time of their own. */
    static Line certain(SplittableRandom random) {
        int count = random.nextInt(2, 6);
        List<Stage> stages = IntStream.range(0, count)
                .mapToObj(one -> Stage.of("S" + one, hours(random))
                        .withStations(random.nextInt(1, 3))
                        .withPlacesAfter(random.nextInt(0, 2))
                        .withSignature(hours(random), new Minutes.Certain(random.nextInt(0, 20))))
                .toList();
        return line(
                random,
                stages,
                () -> random.nextInt(6) == 0
                        ? Visit.passingThrough()
                        : Visit.of(new Minutes.Certain(random.nextInt(40, 300)))
                                .withCuring(random.nextInt(4) == 0 ? random.nextInt(1, 900) : 0)
                                .notBefore(
                                        random.nextInt(5) == 0 ? random.nextInt(0, 3000) : Double.NEGATIVE_INFINITY));
    }

    private static WorkingTime hours(SplittableRandom random) {
        double down = random.nextInt(0, 5000);
        return days(random.nextInt(0, 2), 120)
                .without(List.of(new Interval(down, down + random.nextInt(1, 2000))))
                .without(random.nextBoolean() ? List.of() : List.of(new Interval(450, 470)));
    }

    private static Line line(SplittableRandom random, List<Stage> stages, Supplier<Visit> visit) {
        var vehicles = new ArrayList<Vehicle>();
        for (int stage = stages.size() - 1; stage >= 0; stage--) {
            if (random.nextInt(3) > 0) {
                Whereabouts at = switch (random.nextInt(4)) {
                    case 0 -> new Whereabouts.Unsigned(stage, 0);
                    case 1 -> new Whereabouts.Signed(stage);
                    default -> new Whereabouts.AtWork(stage, random.nextInt(0, 2) * 30);
                };
                vehicles.add(vehicle("on" + stage, at, stages.size(), visit));
            }
        }
        for (int i = 0; i < random.nextInt(1, 8); i++) {
            vehicles.add(
                    vehicle("in front " + i, new Whereabouts.Waiting(random.nextInt(0, 3000)), stages.size(), visit));
        }
        return new Line(DAYS, stages, vehicles, List.of());
    }

    private static Vehicle vehicle(String name, Whereabouts at, int stages, Supplier<Visit> visit) {
        return Vehicle.of(
                name,
                at,
                IntStream.range(0, stages).mapToObj(one -> visit.get()).toList());
    }
}
