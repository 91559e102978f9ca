package wainbook.engineering.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Cause;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.forecast.outcome.Span;
import wainbook.engineering.flow.score.PairedDifference;

/** What holds for the forecast of any line: seeded. */
class ForecastLawsTest {

    private static final int CASES = 60;

    /**
     * The recursion written down once more, in clock minutes and with nothing laid out flat. What ends while nobody at all works
     * counts there at once, and in the forecast when work goes on.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void agrees_with_the_recursion_in_clock_minutes(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = RandomLines.certain(random);
            var forecast = Forecast.of(line, Effort.exactly(seed, 1));
            double[] plain = recursion(line);
            WorkingTime open = line.stages().stream()
                    .flatMap(stage -> Stream.of(stage.working(), stage.signing()))
                    .reduce(line.working(), WorkingTime::and);

            for (int vehicle = 0; vehicle < plain.length; vehicle++) {
                double found = forecast.vehicles().get(vehicle).finish().median();
                assertThat(found).isGreaterThan(plain[vehicle] - 1e-6);
                assertThat(open.worked(found)).isCloseTo(open.worked(plain[vehicle]), within(1e-6));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void the_same_seed_gives_the_same_bytes_on_any_number_of_threads(long seed) {
        Line line = RandomLines.varying(new SplittableRandom(seed));
        var effort = new Effort(seed, 700, 1900, 0, 300, true);
        var together = Forecast.of(line, effort);
        var alone = Forecast.of(line, effort.onOneCore());

        for (Outlook outlook : together.vehicles()) {
            Outlook other = alone.of(outlook.vehicle());
            assertThat(outlook.finish().sorted()).containsExactly(other.finish().sorted());
            assertThat(outlook.stages()).isEqualTo(other.stages());
            assertThat(outlook.besides()).isEqualTo(other.besides());
        }
        assertThat(Forecast.of(line, new Effort(seed + 1, 700, 1900, 0, 300, true))
                        .vehicles()
                        .get(line.vehicles().size() - 1)
                        .finish()
                        .mean())
                .isNotEqualTo(together.vehicles()
                        .get(line.vehicles().size() - 1)
                        .finish()
                        .mean());
    }

    /** Half a minute more in every time of one stage: with the same luck nobody finishes earlier, in no replication. */
    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void a_slower_stage_and_fewer_places_never_help_anybody(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES / 3; i++) {
            Line line = RandomLines.varying(random);
            Stage stage = line.stages().get(random.nextInt(line.stages().size()));
            Line slower = line.with(stage.withTransport(stage.transportMinutes() + 3));
            Line roomier = line.with(stage.withPlacesAfter(stage.placesAfter() + 1));
            Line wider = line.with(stage.withStations(stage.stations() + 1));

            neverLater(line, slower, seed);
            neverLater(roomier, line, seed);
            neverLater(wider, line, seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {9, 10})
    void what_the_time_goes_into_makes_all_of_it(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES / 3; i++) {
            Line line = i % 2 == 0 ? RandomLines.varying(random) : RandomLines.certain(random);
            var forecast = Forecast.of(line, Effort.exactly(seed, 50));
            for (Outlook outlook : forecast.vehicles()) {
                double all = outlook.drivers().values().stream()
                        .mapToDouble(one -> one)
                        .sum();
                double mean = Arrays.stream(outlook.finish().sorted())
                        .map(line.working()::worked)
                        .average()
                        .orElseThrow();

                assertThat(all)
                        .as(outlook.vehicle())
                        .isCloseTo(mean - line.working().worked(0), within(1e-6));
            }
        }
    }

    @Test
    void the_forecast_of_a_finished_line_is_its_history() {
        List<Vehicle> finished = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            finished.add(Vehicle.of("V" + i, new Whereabouts.Finished(-100.0 * i), List.of(visit(60)))
                    .promisedFor(-250));
        }
        var line = new Line(RandomLines.DAYS, List.of(Stage.of("S", RandomLines.DAYS)), finished, List.of());
        var forecast = Forecast.of(line, Effort.usual(1));

        assertThat(forecast.precise()).isTrue();
        for (int i = 0; i < 5; i++) {
            Outlook outlook = forecast.of("V" + i);
            double was = -100.0 * i;
            assertThat(outlook.finish().interval(0.95)).isEqualTo(new Span(was, was));
            assertThat(outlook.promise().orElseThrow().share()).isEqualTo(i >= 3 ? 1 : 0);
            assertThat(outlook.drivers()).isEmpty();
        }
    }

    /** Two people more at a stage: the difference is seen far better with the same luck than without. */
    @Test
    void the_same_luck_narrows_what_a_change_does() {
        Line line = RandomLines.varying(new SplittableRandom(11));
        Stage stage = line.stages().get(0);
        Line changed = line.with(stage.withSignature(RandomLines.DAYS, Minutes.NONE));
        String vehicle = line.vehicles().get(line.vehicles().size() - 1).name();
        var before = Forecast.of(line, Effort.exactly(11, 1000)).of(vehicle).finish();
        var after = Forecast.of(changed, Effort.exactly(11, 1000)).of(vehicle).finish();
        var otherLuck =
                Forecast.of(changed, Effort.exactly(12, 1000)).of(vehicle).finish();
        PairedDifference paired = after.laterThan(before);

        assertThat(paired.mean()).isNegative();
        assertThat(paired.halfWidth())
                .isLessThan(0.6 * otherLuck.laterThan(before).halfWidth());
    }

    @Test
    void one_vehicle_more_behind_shifts_nobodys_luck() {
        Line line = RandomLines.varying(new SplittableRandom(13));
        var more = new ArrayList<>(line.vehicles());
        more.add(Vehicle.of(
                "last", new Whereabouts.Waiting(0), line.vehicles().get(0).visits()));
        var before = Forecast.of(line, Effort.exactly(1, 300));
        var after = Forecast.of(line.withVehicles(more), Effort.exactly(1, 300));

        line.vehicles()
                .forEach(one -> assertThat(after.of(one.name()).finish().sorted())
                        .containsExactly(before.of(one.name()).finish().sorted()));
    }

    /** A job of 100 ± 20 % that has taken 150: its vehicle is rather a slow one, and so is what it still has to do. */
    @Test
    void a_job_that_has_gone_on_for_long_tells_of_the_vehicle() {
        var work = visit(100);
        Line line = new Line(
                RandomLines.DAYS,
                List.of(Stage.of("A", RandomLines.DAYS), Stage.of("B", RandomLines.DAYS)),
                List.of(Vehicle.of("V", new Whereabouts.AtWork(0, 120), List.of(work, work))
                        .withPace(new Pace(1, 0.2))),
                List.of());
        Outlook outlook = Forecast.of(line, Effort.exactly(1, 4000)).of("V");

        assertThat(outlook.stages().get(1).meanMinutes().get(Cause.WORK)).isGreaterThan(120);
    }

    @Test
    void more_replications_until_the_quantile_is_known_well_enough() {
        Line line = RandomLines.varying(new SplittableRandom(15));
        var loose = Forecast.of(line, new Effort(1, 500, 16_000, 200, 100, true));
        var tight = Forecast.of(line, new Effort(1, 500, 4000, 0.001, 100, true));

        assertThat(loose.precise()).isTrue();
        assertThat(loose.replications()).isEqualTo(500);
        assertThat(tight.precise()).isFalse();
        assertThat(tight.replications()).isEqualTo(4000);
    }

    private static void neverLater(Line sooner, Line later, long seed) {
        var first = Forecast.of(sooner, Effort.exactly(seed, 40));
        var second = Forecast.of(later, Effort.exactly(seed, 40));
        for (Outlook outlook : first.vehicles()) {
            double[] early = outlook.finish().inOrder();
            double[] late = second.of(outlook.vehicle()).finish().inOrder();
            for (int i = 0; i < early.length; i++) {
                assertThat(early[i]).isLessThanOrEqualTo(late[i] + 1e-6);
            }
        }
    }

    private static Visit visit(double minutes) {
        return Visit.of(new Minutes.Certain(minutes));
    }

    /** Last leavings, in clock minutes, with no transport. */
    private static double[] recursion(Line line) {
        int last = line.stages().size() - 1;
        List<List<Double>> leavings = new ArrayList<>();
        line.stages().forEach(stage -> leavings.add(new ArrayList<>()));
        double[] finish = new double[line.vehicles().size()];
        for (int v = 0; v < finish.length; v++) {
            Vehicle vehicle = line.vehicles().get(v);
            Start start = Start.of(vehicle.whereabouts());
            double here = start.minute();
            for (int i = start.stage(); i <= last; i++) {
                Stage stage = line.stages().get(i);
                Visit visit = vehicle.visits().get(i);
                boolean first = i == start.stage() && start.kind().started();
                double begun = first ? 0 : Math.max(here, before(leavings.get(i), stage.stations()));
                double gate = begun;
                if (first && start.kind() == Start.Kind.UNSIGNED && !visit.passing()) {
                    gate = stage.signing()
                            .add(
                                    Math.max(0, visit.notBeforeMinute()),
                                    stage.signature().at(0));
                } else if (!visit.passing() && !(first && start.kind() == Start.Kind.SIGNED)) {
                    double from = Math.max(begun, visit.notBeforeMinute());
                    double work = first
                            ? visit.work().left(start.elapsed(), 0)
                            : visit.work().at(0);
                    double done = work > 0
                            ? stage.working().add(from, work)
                            : stage.working().next(from);
                    gate = stage.signing()
                            .add(done + visit.curingMinutes(), stage.signature().at(0));
                }
                here = gate;
                if (i < last) {
                    here = Math.max(here, before(leavings.get(i), 1));
                    int room = stage.placesAfter() + line.stages().get(i + 1).stations();
                    here = Math.max(here, before(leavings.get(i + 1), room));
                }
                leavings.get(i).add(here);
                if (i == last) {
                    leavings.get(i).sort(Double::compare);
                }
            }
            finish[v] = here;
        }
        return finish;
    }

    private static double before(List<Double> leavings, int behind) {
        return leavings.size() < behind ? Double.NEGATIVE_INFINITY : leavings.get(leavings.size() - behind);
    }
}
