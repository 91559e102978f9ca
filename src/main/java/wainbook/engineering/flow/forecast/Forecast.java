package wainbook.engineering.flow.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.forecast.outcome.StageTimes;
import wainbook.engineering.flow.score.RankInterval;
import wainbook.engineering.flow.simulation.Draws;

/**
 * When each vehicle on the line and in front of it finishes, by simulation from the state at minute 0.
 *
 * @param replications that were made
 * @param precise every vehicle's 80 % quantile is known within the tolerance; otherwise the budget ended before
 * @param vehicles in the order of the line
 */
public record Forecast(Effort effort, int replications, boolean precise, List<Outlook> vehicles) {

    private static final double JUDGED = 0.8;
    private static final double CONFIDENCE = 0.95;
    private static final int CHUNK = 250;

    public Forecast {
        vehicles = List.copyOf(vehicles);
    }

    public static Forecast of(Line line, Effort effort) {
        return new Making(line, effort).forecast();
    }

    public Outlook of(String vehicle) {
        return vehicles.stream()
                .filter(one -> one.vehicle().equals(vehicle))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no vehicle is called " + vehicle));
    }

    /** A forecast in the making. Each chunk writes to its own places, and sums are taken chunk by chunk in their order. */
    private static final class Making {

        private final Line line;
        private final Effort effort;
        private final Plan plan;
        private final double[][] finish;
        /** Of those that have appointments before them; empty where nothing is dated after the line. */
        private final double[][] through;

        private final List<Tally> tallies = new ArrayList<>();
        private final Drawing drawing;

        Making(Line line, Effort effort) {
            this.line = line;
            this.effort = effort;
            this.plan = new Plan(line);
            this.finish = new double[plan.vehicles][effort.most()];
            this.through = new double[line.appointments().isEmpty() ? 0 : plan.vehicles][effort.most()];
            this.drawing = new Drawing(plan, effort.drawn());
        }

        Forecast forecast() {
            int made = 0;
            boolean precise = false;
            List<Finish> finishes = List.of();
            while (made < effort.most() && !precise) {
                int wanted = made == 0 ? effort.least() : Math.min(effort.most(), 2 * made);
                replicate(made, wanted);
                made = wanted;
                finishes = finishes(made);
                precise = precise(finishes, made);
            }
            int kept = Math.min(made, effort.drawn());
            var tally = Tally.sum(plan, tallies);
            List<Finish> all = finishes;
            List<Outlook> outlooks = vehicles()
                    .mapToObj(vehicle -> outlook(vehicle, all.get(vehicle), kept, tally))
                    .toList();
            return new Forecast(effort, made, precise, outlooks);
        }

        private void replicate(int from, int to) {
            var chunks = IntStream.range(0, (to - from + CHUNK - 1) / CHUNK);
            tallies.addAll((effort.parallel() ? chunks.parallel() : chunks)
                    .mapToObj(chunk -> chunk(from + chunk * CHUNK, Math.min(to, from + (chunk + 1) * CHUNK)))
                    .toList());
        }

        private Tally chunk(int from, int to) {
            var run = new Run(plan);
            var tally = new Tally(plan);
            long seed = Draws.key(effort.seed());
            for (int replication = from; replication < to; replication++) {
                run.replicate(Draws.key(seed, replication), replication < effort.drawn());
                for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
                    finish[vehicle][replication] = run.finish[vehicle];
                    if (through.length > 0) {
                        through[vehicle][replication] = run.through[vehicle];
                    }
                }
                if (replication < effort.drawn()) {
                    tally.add(run);
                    drawing.keep(run, replication);
                }
            }
            return tally;
        }

        private List<Finish> finishes(int made) {
            return vehicles()
                    .mapToObj(vehicle -> plan.starts[vehicle].kind() == Start.Kind.FINISHED
                            ? Finish.known(plan.starts[vehicle].minute())
                            : Finish.drawn(Arrays.copyOf(finish[vehicle], made)))
                    .toList();
        }

        private boolean precise(List<Finish> finishes, int made) {
            var ranks = RankInterval.of(made, JUDGED, CONFIDENCE);
            return ranks.lower() >= 1
                    && ranks.upper() <= made
                    && finishes.stream()
                            .map(one -> one.certainty(JUDGED))
                            .allMatch(one ->
                                    plan.lineTime.worked(one.highMinute()) - plan.lineTime.worked(one.lowMinute())
                                            <= effort.toleranceMinutes());
        }

        private Finish offTheLine(int vehicle, Finish own) {
            return through.length == 0 || own.known()
                    ? own
                    : switch (plan.starts[vehicle].kind()) {
                        case BEHIND -> Finish.known(plan.starts[vehicle].minute());
                        default -> Finish.drawn(Arrays.copyOf(through[vehicle], own.draws()));
                    };
        }

        private IntStream vehicles() {
            IntStream all = IntStream.range(0, plan.vehicles);
            return effort.parallel() ? all.parallel() : all;
        }

        private Outlook outlook(int at, Finish own, int kept, Tally tally) {
            Vehicle vehicle = line.vehicles().get(at);
            List<StageTimes> stages = IntStream.range(tally.first(at), plan.stages)
                    .mapToObj(stage -> drawing.times(at, stage, kept, tally))
                    .toList();
            return new Outlook(
                    vehicle.name(),
                    offTheLine(at, own),
                    own,
                    vehicle.promised().stream().mapToObj(own::by).findFirst(),
                    stages,
                    tally.besides(at));
        }
    }
}
