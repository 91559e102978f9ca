package wainbook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;
import wainbook.engineering.flow.forecast.model.Pulses;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.simulation.Draws;

/** What it costs to forecast 60 vehicles over 11 stages, beside a loop that draws the same numbers; and on all cores beside one. */
final class ForecastingTheLine {

    private static final int STAGES = 11;
    private static final int VEHICLES = 60;
    private static final int KINDS = 3;
    private static final int REPLICATIONS = 10_000;
    private static final double REFUSAL = 0.06;
    private static final double PACE = 0.08;
    private static final Effort EFFORT = new Effort(7, REPLICATIONS, REPLICATIONS, 0, 1, true);

    private ForecastingTheLine() {}

    static List<Comparison> comparisons() {
        Line planned = line(random -> Lognormal.ofMean(random.nextDouble(60, 110), 0.25));
        Line recorded = line(random -> drawn(random, 60, 60, 120));
        Line paced = recorded.withPulses(moves());
        return List.of(
                besideDraws("forecast by planned minutes, on one core", planned),
                besideDraws("forecast by recorded minutes, on one core", recorded),
                besideOneCore("forecast by planned minutes, on all cores", planned),
                besideOneCore("forecast by recorded minutes, on all cores", recorded),
                new Comparison(
                        "the same with times at stages and drivers",
                        REPLICATIONS,
                        () -> () -> Forecast.of(recorded, Effort.exactly(7, REPLICATIONS)),
                        "without them",
                        () -> () -> Forecast.of(recorded, EFFORT)),
                new Comparison(
                        "forecast of a paced line by recorded minutes",
                        REPLICATIONS,
                        () -> () -> Forecast.of(paced, EFFORT),
                        "the same without its pace",
                        () -> () -> Forecast.of(recorded, EFFORT)));
    }

    private static Comparison besideDraws(String what, Line line) {
        return new Comparison(
                what,
                REPLICATIONS,
                () -> () -> Forecast.of(line, EFFORT.onOneCore()),
                "draw the same numbers",
                () -> () -> draws(line));
    }

    private static Comparison besideOneCore(String what, Line line) {
        return new Comparison(
                what,
                REPLICATIONS,
                () -> () -> Forecast.of(line, EFFORT),
                "the same on one core",
                () -> () -> Forecast.of(line, EFFORT.onOneCore()));
    }

    /** For each vehicle a pace, for each visit a time of work, a wait for the signature and whether the gate is refused. */
    private static double draws(Line line) {
        Minutes[] work = line.vehicles().stream()
                .flatMap(vehicle -> vehicle.visits().stream())
                .map(Visit::work)
                .toArray(Minutes[]::new);
        Minutes[] signature = line.stages().stream().map(Stage::signature).toArray(Minutes[]::new);
        Lognormal pace = new Lognormal(1, PACE);
        long seed = Draws.key(7);
        double sum = 0;
        for (int replication = 0; replication < REPLICATIONS; replication++) {
            long key = Draws.key(seed, replication);
            for (int vehicle = 0; vehicle < VEHICLES; vehicle++) {
                long own = Draws.key(key, vehicle);
                double slow = pace.at(Draws.uniform(Draws.key(own, 1)));
                for (int stage = first(vehicle); stage < STAGES; stage++) {
                    long here = 1000L * (stage + 1);
                    sum += slow * work[vehicle * STAGES + stage].at(Draws.uniform(Draws.key(own, here)));
                    sum += signature[stage].at(Draws.uniform(Draws.key(own, here + 1)));
                    sum += 1 - Draws.uniform(Draws.key(own, here + 2)) <= REFUSAL ? 1 : 0;
                }
            }
        }
        return sum;
    }

    private static int first(int vehicle) {
        return Math.max(0, STAGES - 1 - vehicle);
    }

    /** A full line and 49 orders in front of it, over a year of shifts with a break. */
    private static Line line(Function<SplittableRandom, Minutes> times) {
        var random = new SplittableRandom(1);
        WorkingTime year = year();
        List<Stage> stages = IntStream.range(0, STAGES)
                .mapToObj(stage -> Stage.of("S" + stage, year)
                        .withTransport(5)
                        .withSignature(year, drawn(random, 40, 2, 25))
                        .withRefusal(REFUSAL, drawn(random, 40, 10, 40)))
                .toList();
        List<Minutes> work = IntStream.range(0, KINDS * STAGES)
                .mapToObj(one -> times.apply(random))
                .toList();
        List<Vehicle> vehicles = IntStream.range(0, VEHICLES)
                .mapToObj(vehicle -> Vehicle.of(
                                "V" + vehicle,
                                vehicle < STAGES
                                        ? new Whereabouts.AtWork(first(vehicle), 30)
                                        : new Whereabouts.Waiting(0),
                                IntStream.range(0, STAGES)
                                        .mapToObj(stage -> Visit.of(work.get(KINDS * stage + vehicle % KINDS)))
                                        .toList())
                        .withPace(new Pace(1, PACE)))
                .toList();
        return new Line(year, stages, vehicles, List.of());
    }

    private static Minutes drawn(SplittableRandom random, int records, double from, double to) {
        return Minutes.Drawn.of(random.doubles(records, from, to).boxed().toList());
    }

    /** Four a day. */
    private static Pulses moves() {
        return Pulses.at(
                IntStream.range(0, 365)
                        .filter(day -> day % 7 < 5)
                        .mapToDouble(day -> day * 1440.0)
                        .flatMap(begins -> DoubleStream.of(110, 220, 360, 470).map(minute -> begins + minute))
                        .toArray(),
                5);
    }

    private static WorkingTime year() {
        var shifts = new ArrayList<Interval>();
        for (int day = 0; day < 365; day++) {
            if (day % 7 < 5) {
                double begins = day * 1440.0;
                shifts.add(new Interval(begins, begins + 300));
                shifts.add(new Interval(begins + 330, begins + 510));
            }
        }
        return WorkingTime.of(shifts);
    }
}
