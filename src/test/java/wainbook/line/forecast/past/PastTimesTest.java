package wainbook.line.forecast.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.history.Basis.Ground;
import wainbook.order.OrderSaying.Stops;

/** What the record of vehicles says of times. */
class PastTimesTest {

    @Test
    void work_lasts_from_the_arrival_to_the_last_evidence_and_the_wait_from_there_to_the_signature() {
        PastVisit visit =
                only(bus(1).at(10, "strip").done(40, "strip").done(100, "strip").signed(130, "strip"));

        assertThat(visit.stage()).isEqualTo("strip");
        assertThat(visit.kind()).isEqualTo("BUS");
        assertThat(visit.workMinutes()).isEqualTo(90);
        assertThat(visit.signatureMinutes()).isEqualTo(30);
        assertThat(visit.plannedMinutes()).isEqualTo(100);
        assertThat(visit.refused()).isFalse();
    }

    @Test
    void a_stage_that_nobody_has_looked_at_the_gate_of_says_nothing_yet() {
        assertThat(bus(1).at(10, "strip").done(100, "strip").past().visits()).isEmpty();
    }

    @Test
    void held_minutes_are_no_work_where_the_hold_stopped_work() {
        var stopped = bus(1).at(0, "strip").held(20, Stops.WORK).released(50).done(100, "strip");
        var worked = bus(2).at(0, "strip").held(20, Stops.SIGN).released(50).done(100, "strip");

        assertThat(only(stopped.signed(100, "strip")).workMinutes()).isEqualTo(70);
        assertThat(only(worked.signed(100, "strip")).workMinutes()).isEqualTo(100);
        assertThat(stopped.past().minutes(Stop.HOLD)).containsExactly(30.0);
    }

    @Test
    void a_stay_in_a_bay_is_no_work_at_the_stage_and_is_kept_by_itself() {
        var bus = bus(1).at(0, "strip").done(30, "strip").off(40, "strip").back(100, "strip");
        bus.done(120, "strip").signed(120, "strip");

        assertThat(only(bus).workMinutes()).isEqualTo(60);
        assertThat(bus.past().minutes(Stop.BAY)).containsExactly(60.0);
    }

    @Test
    void minutes_that_a_hold_and_a_bay_share_are_taken_off_once() {
        var bus = bus(1).at(0, "strip")
                .held(20, Stops.WORK)
                .off(30, "strip")
                .released(50)
                .back(60, "strip");

        assertThat(only(bus.done(100, "strip").signed(100, "strip")).workMinutes())
                .isEqualTo(60);
    }

    @Test
    void a_refused_gate_ends_the_first_work_and_what_follows_is_work_again() {
        PastVisit visit = only(bus(1).at(0, "strip")
                .done(60, "strip")
                .refused(70, "strip")
                .done(95, "strip")
                .signed(100, "strip"));

        assertThat(visit.workMinutes()).isEqualTo(60);
        assertThat(visit.signatureMinutes()).isEqualTo(10);
        assertThat(visit.refused()).isTrue();
        assertThat(visit.againMinutes()).hasValue(25);
    }

    @Test
    void of_a_stage_passed_again_the_first_stay_counts() {
        PastVisit visit = only(bus(1).at(0, "strip")
                .done(60, "strip")
                .signed(60, "strip")
                .at(200, "strip")
                .done(500, "strip")
                .signed(500, "strip"));

        assertThat(visit.workMinutes()).isEqualTo(60);
    }

    @Test
    void work_done_off_shift_alone_says_nothing() {
        assertThat(bus(1).at(10, "strip")
                        .done(10, "strip")
                        .signed(30, "strip")
                        .past()
                        .visits())
                .isEmpty();
    }

    @Test
    void the_share_of_refused_gates_with_few_of_them_is_drawn_towards_that_of_all_stages() {
        PastTimes times = of(
                plain(1),
                plain(2),
                plain(3),
                bus(4).at(0, "fit")
                        .done(60, "fit")
                        .refused(70, "fit")
                        .done(80, "fit")
                        .signed(90, "fit"));

        // one of four stays and one more: 0.2; at the stage (1 + 5 · 0.2) / (1 + 5), elsewhere (0 + 1) / (3 + 5)
        assertThat(times.refusal("fit")).isCloseTo(2 / 6.0, within(1e-12));
        assertThat(times.refusal("strip")).isCloseTo(1 / 8.0, within(1e-12));
        assertThat(times.again().at(0.5)).isEqualTo(10);
    }

    @Test
    void a_works_without_a_record_rests_on_planned_minutes_and_waits_for_no_signature() {
        PastTimes none = of();

        assertThat(none.work("BUS", "strip", 100).basis().ground()).isEqualTo(Ground.PLANNED);
        assertThat(none.signature("strip")).isEqualTo(Minutes.NONE);
        assertThat(none.refusal("strip")).isZero();
        assertThat(none.known(Stop.HOLD)).isFalse();
        assertThat(none.stop(Stop.HOLD)).isInstanceOf(Lognormal.class);
    }

    @Test
    void twenty_of_a_kind_at_a_stage_stand_for_themselves() {
        PastTimes times =
                of(IntStream.range(0, 20).mapToObj(PastTimesTest::plain).toArray(Recorded[]::new));

        assertThat(times.vehicles()).isEqualTo(20);
        assertThat(times.work("BUS", "strip", 100).basis().ground()).isEqualTo(Ground.OWN);
        assertThat(times.work("BUS", "strip", 100).minutes().at(0.5)).isCloseTo(60, within(1e-9));
        assertThat(times.signature("strip").at(0.5)).isEqualTo(15);
    }

    private static Recorded plain(int number) {
        return bus(number).at(0, "strip").done(60, "strip").signed(75, "strip");
    }

    private static Recorded bus(int number) {
        return new Recorded("WB-" + number);
    }

    private static PastVisit only(Recorded recorded) {
        assertThat(recorded.past().visits()).hasSize(1);
        return recorded.past().visits().get(0);
    }

    private static PastTimes of(Recorded... vehicles) {
        return new PastTimes(List.of(vehicles).stream().map(Recorded::past).toList());
    }
}
