package wainbook.engineering.flow.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.sequence.Found.Verdict;

/** What holds of any line whose times vary: four stages, one vehicle at work, two groups in front. */
class SequenceLawsTest {

    private static final WorkingTime ALWAYS = WorkingTime.always();
    private static final Budget SMALL = new Budget(5, 40, 200, 400, 400);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void it_is_never_later_than_todays_on_the_draws_of_the_search_and_keeps_its_groups(long seed) {
        InFront front = front(new SplittableRandom(seed));

        Found found = new SequenceSearch(front, SMALL).find(progress -> {});

        assertThat(found.lateWhenSearched()).isLessThanOrEqualTo(found.lateTodayWhenSearched());
        List<String> first = front.groups().get(0);
        assertThat(found.order().subList(0, first.size())).containsExactlyInAnyOrderElementsOf(first);
        assertThat(found.order()).containsExactlyInAnyOrderElementsOf(found.today());
        assertThat(found.tried()).isLessThanOrEqualTo(SMALL.orders());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void the_same_seed_gives_the_same_answer(long seed) {
        InFront front = front(new SplittableRandom(seed));

        assertThat(new SequenceSearch(front, SMALL).find(progress -> {}))
                .isEqualTo(new SequenceSearch(front, SMALL).find(progress -> {}));
    }

    @Test
    void nothing_else_of_the_line_changes() {
        InFront front = front(new SplittableRandom(7));
        List<Integer> order = new ArrayList<>(front.today());
        order.set(0, 1);
        order.set(1, 0);

        Line changed = front.in(order);

        Line line = front.line();
        assertThat(changed.stages()).isEqualTo(line.stages());
        assertThat(changed.working()).isEqualTo(line.working());
        assertThat(changed.vehicles()).containsExactlyInAnyOrderElementsOf(line.vehicles());
        assertThat(changed.vehicles().get(0)).isEqualTo(line.vehicles().get(0));
        assertThat(changed.vehicles().get(1)).isEqualTo(line.vehicles().get(2));
        assertThat(front.in(front.today())).isEqualTo(line);
    }

    /**
     * Vehicles of one sort promised for one minute come as well in any order. The search finds some that its own draws favour; fresh ones
     * do not bear that out.
     */
    @Test
    void what_only_the_draws_of_the_search_favour_is_not_proposed() {
        List<Vehicle> alike = IntStream.range(0, 6)
                .mapToObj(at -> vehicle("V" + at, Lognormal.ofMean(60, 0.6), 150))
                .toList();
        InFront front = new InFront(
                line(List.of(), alike),
                List.of(alike.stream().map(Vehicle::name).toList()));

        Found found = new SequenceSearch(front, new Budget(3, 20, 100, 1000, 1000)).find(progress -> {});

        assertThat(found.lateWhenSearched()).isLessThan(found.lateTodayWhenSearched());
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_SHOWN);
    }

    @Test
    void groups_are_those_that_wait_in_todays_order() {
        Line line = line(List.of(), List.of(vehicle("1", Minutes.NONE, 0), vehicle("2", Minutes.NONE, 0)));

        assertThatThrownBy(() -> new InFront(line, List.of(List.of("2", "1"))))
                .hasMessageContaining("in front of the line wait [1, 2]");
        assertThat(new InFront(line, List.of(List.of("1"), List.of("2"))).orders())
                .isEqualTo(1);
        assertThat(new InFront(line, List.of(List.of(), List.of("1", "2"))).all())
                .containsExactly(List.of(0, 1), List.of(1, 0));
    }

    /** Due in 480 with 600 left 0.8, due in 1000 with 620 left 1.61; overdue come before both, the less slack the earlier. */
    @Test
    void the_critical_ratio_puts_the_most_urgent_first() {
        var late = new Starts.Urgency(-500, -100, 400);
        var later = new Starts.Urgency(-700, -50, 650);
        var tight = new Starts.Urgency(-120, 480, 600);
        var loose = new Starts.Urgency(380, 1000, 620);

        assertThat(List.of(loose, tight, late, later).stream()
                        .sorted(Starts.Urgency.MOST_FIRST)
                        .toList())
                .containsExactly(later, late, tight, loose);
    }

    private static InFront front(SplittableRandom random) {
        List<Vehicle> here = waiting(random, "here ", random.nextInt(3, 7));
        List<Vehicle> away = waiting(random, "away ", random.nextInt(0, 4));
        var all = new ArrayList<>(here);
        all.addAll(away);
        Vehicle onLine = vehicle("on the line", Lognormal.ofMean(60, 0.4), 300);
        return new InFront(
                line(
                        List.of(new Vehicle(
                                onLine.name(),
                                new Whereabouts.AtWork(1, 20),
                                onLine.visits(),
                                onLine.pace(),
                                onLine.hold(),
                                onLine.bookings(),
                                onLine.promised(),
                                0)),
                        all),
                List.of(
                        here.stream().map(Vehicle::name).toList(),
                        away.stream().map(Vehicle::name).toList()));
    }

    private static List<Vehicle> waiting(SplittableRandom random, String name, int count) {
        return IntStream.range(0, count)
                .mapToObj(at -> vehicle(
                        name + at,
                        Lognormal.ofMean(random.nextInt(30, 120), random.nextDouble(0.1, 0.5)),
                        random.nextInt(100, 900)))
                .toList();
    }

    private static Vehicle vehicle(String name, Minutes work, double promised) {
        return Vehicle.of(
                        name,
                        new Whereabouts.Waiting(0),
                        IntStream.range(0, 4).mapToObj(stage -> Visit.of(work)).toList())
                .promisedFor(promised);
    }

    private static Line line(List<Vehicle> onLine, List<Vehicle> waiting) {
        var all = new ArrayList<>(onLine);
        all.addAll(waiting);
        return new Line(
                ALWAYS,
                IntStream.range(0, 4).mapToObj(at -> Stage.of("S" + at, ALWAYS)).toList(),
                all,
                List.of());
    }
}
