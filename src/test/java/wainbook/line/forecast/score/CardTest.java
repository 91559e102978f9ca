package wainbook.line.forecast.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.history.Basis.Ground;
import wainbook.engineering.statistics.Share;
import wainbook.line.forecast.kept.Prediction;
import wainbook.works.shift.Shifts;

/** Forecasts held against what came, in a works that works round the clock. */
class CardTest {

    private static final Instant MORNING = Instant.parse("2026-03-02T05:00:00Z");
    private static final Instant LONG_AFTER = MORNING.plus(Duration.ofDays(30));
    private static final Card.Minutes MINUTES =
            (from, to) -> Duration.between(from, to).toSeconds() / 60.0;

    @Test
    void what_came_within_the_middle_counts_ends_included_and_what_came_outside_does_not() {
        Card card = card(LONG_AFTER, came("a", 110), came("b", 190), came("c", 109), came("d", 150), came("e", 200));

        // 10 % to 90 % are 110 to 190, 2.5 % to 97.5 % are 102.5 to 197.5 minutes.
        assertThat(card.within80()).contains(new Share(3, 5));
        assertThat(card.within95()).contains(new Share(4, 5));
        assertThat(card.late().getAsDouble()).isCloseTo((110 + 190 + 109 + 150 + 200) / 5.0 - 150, within(1e-9));
        assertThat(card.places().stream().mapToInt(count -> count).sum()).isEqualTo(5);
    }

    @Test
    void one_that_should_have_been_finished_and_is_not_counts_as_outside() {
        Card card = card(LONG_AFTER, came("a", 150), new Outcome(said("b", Ground.OWN), Optional.empty()));

        assertThat(card.within80()).contains(new Share(1, 2));
        assertThat(card.unfinished()).isEqualTo(1);
        assertThat(card.loss().orElseThrow().forecast()).isPositive();
    }

    @Test
    void what_may_still_come_does_not_count_yet_whether_it_came_or_not() {
        Card card = card(MORNING.plus(Duration.ofMinutes(197)), came("a", 105), came("b", 150));

        assertThat(card.counted()).isZero();
        assertThat(card.open()).isEqualTo(2);
        assertThat(card.within80()).isEmpty();
    }

    @Test
    void what_rests_on_planned_minutes_is_left_out_and_counted() {
        Card card = card(
                LONG_AFTER,
                came("a", 150),
                new Outcome(said("b", Ground.PLANNED), Optional.of(MORNING.plus(Duration.ofDays(9)))));

        assertThat(card.onPlan()).isEqualTo(1);
        assertThat(card.counted()).isEqualTo(1);
    }

    /** At 150 the forecast loses (40 · 0.1 + 0 + 40 · 0.1) / 3; adding up said 90, counting takts 160. */
    @Test
    void the_loss_is_that_of_three_quantiles_and_of_the_plain_rules_as_points() {
        Card card = card(LONG_AFTER, came("a", 150));

        assertThat(card.loss().orElseThrow().forecast()).isCloseTo(8 / 3.0, within(1e-9));
        assertThat(card.loss().orElseThrow().byStages()).isCloseTo(60 * 1.5 / 3, within(1e-9));
        assertThat(card.loss().orElseThrow().byTakt()).isEqualTo(OptionalDouble.of(10 * 1.5 / 3));
        assertThat(card.loss().orElseThrow().beatsAll()).isTrue();
    }

    @Test
    void a_span_is_off_where_what_it_said_lies_outside_the_interval_on_enough_vehicles() {
        // 33 of 50 fail for 80 %, 41 of 50 do not (Clopper and Pearson, computed)
        assertThat(Card.off(new Share(33, 50), 0.8)).isTrue();
        assertThat(Card.off(new Share(41, 50), 0.8)).isFalse();
        assertThat(Card.off(new Share(5, 19), 0.8)).isFalse();
    }

    /** Of 24 half come 30 minutes after the 90 % point: the 20th smallest excess is 30. */
    @Test
    void widening_is_what_would_have_made_the_span_right() {
        var outcomes = new ArrayList<Outcome>();
        for (int i = 0; i < 24; i++) {
            outcomes.add(came("v" + i, i % 2 == 0 ? 150 : 220));
        }
        Card card = Card.of(1, outcomes, LONG_AFTER, MINUTES);

        assertThat(Card.off(card.within80().orElseThrow(), 0.8)).isTrue();
        assertThat(card.widen80()).isEqualTo(OptionalDouble.of(30));
    }

    @Test
    void of_each_vehicle_the_first_forecast_counts_that_looked_so_far_ahead() {
        List<Prediction> said = List.of(
                said("a", MORNING, 30 * 60),
                said("a", MORNING.plusSeconds(60), 31 * 60),
                said("a", MORNING.plus(Duration.ofDays(1)), 60));
        Map<String, Instant> came = new HashMap<>();
        came.put("a", MORNING.plus(Duration.ofHours(30)));

        Cards cards = Cards.of(said, came, new Shifts(List.of(), ZoneOffset.UTC), day -> true, LONG_AFTER);

        assertThat(cards.cards().get(0).counted()).isEqualTo(1);
        assertThat(cards.cards().get(1).counted()).isZero();
        assertThat(cards.nearest(2).orElseThrow().days()).isEqualTo(1);
        assertThat(cards.nearest(99).orElseThrow().days()).isEqualTo(10);
    }

    private static Card card(Instant now, Outcome... outcomes) {
        return Card.of(1, List.of(outcomes), now, MINUTES);
    }

    private static Outcome came(String order, int minute) {
        return new Outcome(said(order, Ground.OWN), Optional.of(MORNING.plus(Duration.ofMinutes(minute))));
    }

    /** Even between 100 and 200 minutes ahead. */
    private static Prediction said(String order, Ground ground) {
        return new Prediction(
                order,
                MORNING,
                Prediction.LEVELS.stream()
                        .map(level -> MORNING.plusMillis(Math.round((100 + 100 * level) * 60_000)))
                        .toList(),
                LocalDate.of(2026, 3, 2),
                MORNING.plus(Duration.ofHours(10)),
                0.9,
                Optional.of(ground),
                MORNING.plus(Duration.ofMinutes(90)),
                Optional.of(MORNING.plus(Duration.ofMinutes(160))));
    }

    private static Prediction said(String order, Instant at, int minutesAhead) {
        return new Prediction(
                order,
                at,
                Prediction.LEVELS.stream()
                        .map(level -> at.plus(Duration.ofMinutes(minutesAhead)))
                        .toList(),
                LocalDate.of(2026, 3, 2),
                at,
                0.5,
                Optional.empty(),
                at,
                Optional.empty());
    }
}
