package wainbook.line.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.Gain;
import wainbook.line.cause.Matter;
import wainbook.line.cause.Matter.Sort;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.line.forecast.state.SmallLine;
import wainbook.line.forecast.state.TheLineNow;

/** What ending a matter does for a works of two stations in which everybody is promised for today. */
class GainsTest {

    @Test
    void a_hold_at_the_last_station_costs_those_behind_it_too() {
        Matter hold = new Matter(Sort.HOLD, "first", 1);
        TheLineNow line = SmallLine.line(
                SmallLine.vehicle("first", Doing.WORK, "fit", new Stop.Open(Stop.HOLD, 1, true, 60)),
                SmallLine.vehicle("second", Doing.SIGNED, "strip"),
                SmallLine.vehicle("third", Doing.ACCEPTED, null));

        Gain gain = Gains.of(line, List.of(hold)).get(hold);
        assertThat(gain.shown()).isTrue();
        assertThat(gain.lateMinutes().mean()).isGreaterThan(300);
        assertThat(gain.earlier()).isEqualTo(3);
    }

    @Test
    void a_hold_on_a_vehicle_in_front_of_the_line_may_save_less_than_one_on_it() {
        Matter ahead = new Matter(Sort.HOLD, "first", 1);
        Matter behind = new Matter(Sort.HOLD, "third", 1);
        TheLineNow line = SmallLine.line(
                SmallLine.vehicle("first", Doing.WORK, "fit", new Stop.Open(Stop.HOLD, 1, true, 60)),
                SmallLine.vehicle("third", Doing.ACCEPTED, null, new Stop.Open(Stop.HOLD, 1, true, 60)));

        Map<Matter, Gain> gains = Gains.of(line, List.of(ahead, behind));
        assertThat(gains.get(ahead).lateMinutes().mean())
                .isGreaterThan(gains.get(behind).lateMinutes().mean());
    }

    @Test
    void a_nonconformity_bars_the_gate_and_a_call_stops_the_work_until_they_are_ended() {
        Matter decide = new Matter(Sort.NONCONFORMITY, "first", 3);
        Matter help = new Matter(Sort.HELP, "second", 2);
        TheLineNow line = SmallLine.line(
                SmallLine.vehicle("first", Doing.UNSIGNED, "fit", new Stop.Open(Stop.NONCONFORMITY, 3, false, 20)),
                SmallLine.vehicle("second", Doing.WORK, "strip", new Stop.Open(Stop.HELP, 2, true, 5)));

        Map<Matter, Gain> gains = Gains.of(line, List.of(decide, help));
        assertThat(gains.get(decide).shown()).isTrue();
        assertThat(gains.get(help).shown()).isTrue();
    }

    @Test
    void a_part_that_comes_now_lets_the_work_go_on() {
        Matter part = new Matter(Sort.PART, "first", 1);
        TheLineNow line = SmallLine.line(
                SmallLine.vehicle("first", Doing.WORK, "fit").needing(SmallLine.missing("fit", 2)),
                SmallLine.vehicle("second", Doing.SIGNED, "strip"));

        Gain gain = Gains.of(line, List.of(part)).get(part);
        assertThat(gain.lateMinutes().mean()).isGreaterThan(600);
        assertThat(gain.earlier()).isEqualTo(2);
    }

    @Test
    void what_changes_nothing_is_not_shown_to_save_and_an_unknown_vehicle_has_no_gain() {
        Matter sign = new Matter(Sort.SIGNATURE, "first", 0);
        Matter nobody = new Matter(Sort.HOLD, "nobody", 1);

        // Without a record no wait for a signature is counted with, so that signing now saves none.
        Map<Matter, Gain> gains =
                Gains.of(SmallLine.line(SmallLine.vehicle("first", Doing.UNSIGNED, "fit")), List.of(sign, nobody));
        assertThat(gains.get(sign).shown()).isFalse();
        assertThat(gains).doesNotContainKey(nobody);
    }
}
