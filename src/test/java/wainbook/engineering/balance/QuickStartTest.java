package wainbook.engineering.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/**
 * Jackson's eleven tasks as they lie beside the published optima: within ten minutes ranked positional weights need six stations,
 * where five are enough.
 */
class QuickStartTest {

    private static final Work JACKSON = Work.of(Graphs.read("JACKSON.IN2"));

    @Test
    void within_ten_minutes_it_needs_six_stations_and_has_no_answer_for_five() {
        assertThat(quick(JACKSON).stations(10, 6))
                .hasValueSatisfying(
                        placed -> assertThat(PositionalWeight.count(placed)).isEqualTo(6));
        assertThat(quick(JACKSON).stations(10, 5)).isEmpty();
    }

    @Test
    void with_six_stations_it_finds_the_nine_minutes_that_are_the_best() {
        QuickStart.Start start = quick(JACKSON).cycle(6, 8, 1).orElseThrow();

        assertThat(start.cycle()).isEqualTo(9);
        assertThat(PositionalWeight.count(start.placed())).isEqualTo(6);
    }

    @Test
    void one_station_takes_the_time_of_all() {
        assertThat(quick(JACKSON).everything()).isEqualTo(46);
        assertThat(quick(JACKSON).cycle(1, 1, 1))
                .hasValueSatisfying(start -> assertThat(start.cycle()).isEqualTo(46));
    }

    @Test
    void it_is_silent_where_it_would_break_a_rule() {
        Work apart = JACKSON.under(List.of(new Rule.Apart("1", "2")));

        assertThat(quick(apart).stations(46, 1)).isEmpty();
        assertThat(quick(apart).cycle(1, 1, 1)).isEmpty();
    }

    private static QuickStart quick(Work work) {
        Ticks ticks = Ticks.of(work, DoubleStream.empty());
        Precedence precedence = Precedence.of(work.tasks()).orElseThrow();
        return new QuickStart(work, ticks, precedence, new Kept(work, ticks, precedence));
    }
}
