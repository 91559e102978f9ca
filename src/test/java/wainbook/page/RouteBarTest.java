package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.page.RouteBar.Cell;

class RouteBarTest {

    private static final Cell STRIP = Cell.signed("1", "Strip", 60);
    private static final Cell MOTOR = Cell.now("2", "Motor", 100, 0.5);
    private static final Cell WEIGH = Cell.blank("3", "Weigh", 40);

    private static RouteBar bar(Optional<Double> plannedMin) {
        return new RouteBar(List.of(STRIP, MOTOR, WEIGH), 100, plannedMin);
    }

    @Test
    void a_cell_is_as_wide_as_its_planned_work() {
        assertThat(bar(Optional.empty()).drawn())
                .extracting(RouteBar.Drawn::x, RouteBar.Drawn::width, RouteBar.Drawn::share)
                .containsExactly(
                        tuple("0.000%", "30.000%", "100.000%"),
                        tuple("30.000%", "50.000%", "50.000%"),
                        tuple("80.000%", "20.000%", "0.000%"));
    }

    @Test
    void the_scale_counts_whole_takts() {
        assertThat(bar(Optional.empty()).ticks())
                .extracting(RouteBar.Tick::x)
                .containsExactly("0.000%", "50.000%", "100.000%");
    }

    @Test
    void lateness_is_the_way_from_the_plan_to_the_present() {
        RouteBar late = bar(Optional.of(182.0));
        assertThat(late.lateMin()).isEqualTo(72);
        assertThat(late.lateness()).isEqualTo("1 h 12 min behind plan");
        assertThat(late.late()).isTrue();
        assertThat(late.gapStart()).contains("55.000%");
        assertThat(late.gapWidth()).contains("36.000%");
    }

    @Test
    void a_vehicle_ahead_of_its_plan_is_not_late() {
        RouteBar early = bar(Optional.of(90.0));
        assertThat(early.lateness()).isEqualTo("20 min ahead of plan");
        assertThat(early.late()).isFalse();
        assertThat(early.gapStart()).contains("45.000%");
    }

    @Test
    void a_stage_over_its_time_is_drawn_full_and_said_as_it_is() {
        RouteBar over = new RouteBar(List.of(STRIP, Cell.now("2", "Motor", 100, 1.2), WEIGH), 100, Optional.empty());
        assertThat(over.drawn().get(1).share()).isEqualTo("100.000%");
        assertThat(over.where()).isEqualTo("Stage 2, Motor: 120 % of the planned time used.");
    }

    @Test
    void the_words_say_what_the_drawing_shows() {
        RouteBar bar = new RouteBar(List.of(STRIP.carriesOver(), MOTOR.onHold(), WEIGH), 100, Optional.of(110.0));
        assertThat(bar.alternative())
                .isEqualTo("stage 1 Strip: signed, carried-over work leaves here; "
                        + "stage 2 Motor: in hand, 50 % of the planned time used, held; "
                        + "stage 3 Weigh: to come; On plan");
        assertThat(bar.where()).isEqualTo("Stage 2, Motor: held.");
    }

    @Test
    void a_vehicle_is_at_one_stage_at_a_time() {
        assertThatThrownBy(() -> new RouteBar(List.of(MOTOR, MOTOR), 100, Optional.empty()))
                .hasMessageContaining("one stage at a time");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void cells_fill_the_strip_without_gap_or_overlap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Cell> cells = new ArrayList<>();
        int count = random.nextInt(1, 20);
        for (int i = 0; i < count; i++) {
            cells.add(Cell.blank(String.valueOf(i), "stage", random.nextDouble(1, 300)));
        }
        double end = 0;
        for (RouteBar.Drawn drawn : new RouteBar(cells, 94, Optional.empty()).drawn()) {
            assertThat(percent(drawn.x())).isCloseTo(end, within(0.001 * cells.size()));
            end += percent(drawn.width());
        }
        assertThat(end).isCloseTo(100, within(0.001 * cells.size()));
    }

    private static double percent(String text) {
        return Double.parseDouble(text.replace("%", ""));
    }
}
