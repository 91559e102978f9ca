package wainbook.line.forecast.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.SmallLine;
import wainbook.line.forecast.state.TheLineNow;

/** What is asked of a works of two stations that works from six to two; it is eight on a Monday. */
class WhatIfTest {

    private static final WhatIf NOTHING = WhatIf.nothing();

    @Test
    void nothing_asked_changes_nothing() {
        Answer answer = Answer.of(SmallLine.full(), NOTHING);

        assertThat(NOTHING.asksNothing()).isTrue();
        assertThat(answer.vehicles())
                .allSatisfy(row -> assertThat(row.later().orElseThrow().mean()).isCloseTo(0, within(1e-9)));
        assertThat(answer.gain().lateMinutes().mean()).isZero();
        assertThat(answer.more().mean()).isZero();
    }

    @Test
    void overtime_of_the_whole_line_lets_more_be_finished_and_nobody_later() {
        Answer answer =
                Answer.of(SmallLine.full(), overtime(Optional.empty(), SmallLine.TODAY, SmallLine.TODAY.plusDays(1)));

        assertThat(answer.vehicles())
                .allSatisfy(row -> assertThat(row.after().median())
                        .isLessThanOrEqualTo(row.before().median()));
        assertThat(answer.lateAfter()).isLessThan(answer.lateBefore());
        assertThat(answer.gain().shown()).isTrue();
    }

    @Test
    void overtime_at_one_stage_changes_that_stages_hours_alone() {
        TheLineNow now = SmallLine.full();
        Line line = overtime(Optional.of("fit"), SmallLine.TODAY).changed(now);

        assertThat(line.stages().get(0).working())
                .isEqualTo(now.line().stages().get(0).working());
        double end = line.stages().get(1).working().intervals().get(0).toMinute();
        assertThat(end).isEqualTo(6 * 60 + 120);
    }

    @Test
    void a_paced_line_moves_on_in_overtime_at_the_pace_it_had() {
        TheLineNow paced = SmallLine.paced();
        double[] before = paced.line().pulses().minutes();
        double[] after = overtime(Optional.empty(), SmallLine.TODAY)
                .changed(paced)
                .pulses()
                .minutes();

        // It moves at nine, eleven and one; with work until four also at three.
        assertThat(after).hasSize(before.length + 1).contains(7 * 60.0);
    }

    @Test
    void one_more_person_shortens_work_that_is_not_begun_yet() {
        TheLineNow now = SmallLine.full();
        Line line = new WhatIf(
                        Optional.empty(),
                        Optional.of(new WhatIf.Hands("fit", new BigDecimal("0.5"))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())
                .changed(now);

        Visit there = now.line().vehicles().get(0).visits().get(1);
        assertThat(line.vehicles().get(0).visits().get(1)).isEqualTo(there);
        assertThat(line.vehicles().get(1).visits().get(1).work().at(0.5))
                .isCloseTo(there.work().at(0.5) / 2, within(1e-9));
    }

    @Test
    void a_second_station_lets_the_next_vehicle_in_at_once() {
        Answer answer = Answer.of(
                SmallLine.full(),
                new WhatIf(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("fit"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));

        assertThat(answer.vehicles().get(0).later().orElseThrow().mean()).isCloseTo(0, within(1e-9));
        assertThat(answer.vehicles().get(1).later().orElseThrow().high()).isNegative();
    }

    @Test
    void on_a_paced_line_a_second_station_keeps_nobody_longer() {
        Answer answer = Answer.of(
                SmallLine.paced(),
                new WhatIf(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("strip"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));

        assertThat(answer.vehicles())
                .allSatisfy(row -> assertThat(row.later().orElseThrow().mean()).isLessThanOrEqualTo(0));
    }

    @Test
    void an_order_put_first_comes_first_and_one_down_last() {
        assertThat(entering(turn("c", WhatIf.Turn.Place.FIRST))).containsExactly("c", "a", "b");
        assertThat(entering(turn("c", WhatIf.Turn.Place.ONE_UP))).containsExactly("a", "c", "b");
        assertThat(entering(turn("a", WhatIf.Turn.Place.ONE_DOWN))).containsExactly("b", "a", "c");
        assertThat(entering(turn("c", WhatIf.Turn.Place.ONE_DOWN))).containsExactly("a", "b", "c");
    }

    @Test
    void a_hold_released_now_lets_its_vehicle_finish_earlier() {
        Answer answer = Answer.of(SmallLine.held(), release("held", 1, Optional.empty()));

        assertThat(answer.vehicles().get(0).later().orElseThrow().high()).isNegative();
        assertThat(answer.gain().earlier()).isPositive();
    }

    @Test
    void what_the_line_does_not_know_is_told_at_its_field() {
        assertThat(fields(SmallLine.full(), overtime(Optional.of("paint"), SmallLine.TODAY)))
                .containsExactly("#overtimeStage");
        assertThat(fields(SmallLine.full(), overtime(Optional.empty(), SmallLine.TODAY.minusDays(1))))
                .containsExactly("#days");
        assertThat(fields(SmallLine.full(), overtime(Optional.empty(), LocalDate.of(2026, 3, 7))))
                .containsExactly("#days");
        assertThat(fields(SmallLine.full(), turn("nobody", WhatIf.Turn.Place.FIRST)))
                .containsExactly("#vehicle");
        assertThat(fields(SmallLine.held(), release("held", 2, Optional.of(SmallLine.NOW.minusSeconds(1)))))
                .containsExactly("#hold", "#released");
        assertThat(fields(
                        SmallLine.full(),
                        new WhatIf(
                                Optional.empty(),
                                Optional.of(new WhatIf.Hands("fit", new BigDecimal("0.2"))),
                                Optional.of("paint"),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(SmallLine.TODAY.minusDays(1)))))
                .containsExactly("#factor", "#secondStation", "#by");
        assertThat(fields(SmallLine.full(), overtime(Optional.empty(), SmallLine.TODAY)))
                .isEmpty();
    }

    private static List<String> fields(TheLineNow line, WhatIf asked) {
        return new Limits(line)
                .against(asked).stream()
                        .map(Reason::lift)
                        .flatMap(Optional::stream)
                        .toList();
    }

    private static List<String> entering(WhatIf asked) {
        return Turns.taken(SmallLine.waiting("a", "b", "c"), asked.turn().orElseThrow()).waiting().stream()
                .map(OnHand::order)
                .toList();
    }

    private static WhatIf overtime(Optional<String> stage, LocalDate... days) {
        return new WhatIf(
                Optional.of(new WhatIf.Overtime(List.of(days), 120, stage)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static WhatIf turn(String order, WhatIf.Turn.Place place) {
        return new WhatIf(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new WhatIf.Turn(order, place)),
                Optional.empty(),
                Optional.empty());
    }

    private static WhatIf release(String order, int hold, Optional<Instant> at) {
        return new WhatIf(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new WhatIf.Release(order, hold, at)),
                Optional.empty());
    }
}
