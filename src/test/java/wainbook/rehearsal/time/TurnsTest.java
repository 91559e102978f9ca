package wainbook.rehearsal.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class TurnsTest {

    private static final Instant SIX = Instant.parse("2026-11-25T06:00:00Z");

    private final List<String> said = new ArrayList<>();
    private final Turns turns = new Turns(new Turns.Surroundings() {
        @Override
        public void enter() {}

        @Override
        public void leave() {}
    });

    private Consumer<PlayedClock> every(String name, int minutes) {
        return clock -> {
            while (true) {
                clock.pass(Duration.ofMinutes(minutes));
                said.add(name + Duration.between(SIX, clock.instant()).toMinutes());
            }
        };
    }

    private static Instant after(int minutes) {
        return SIX.plus(Duration.ofMinutes(minutes));
    }

    @Test
    void whoever_comes_next_in_time_acts_and_of_two_at_once_the_one_named_first() {
        turns.add("b", SIX, every("b", 2));
        turns.add("a", SIX, every("a", 3));
        turns.play(after(6), time -> true);
        assertThat(said).containsExactly("b2", "a3", "b4", "b6", "a6");
    }

    @Test
    void nothing_happens_after_the_end_nor_once_no_more_is_wanted() {
        turns.add("a", SIX, every("a", 3));
        turns.play(after(5), time -> true);
        assertThat(said).containsExactly("a3");
        var stopped = new Turns(new Turns.Surroundings() {
            @Override
            public void enter() {}

            @Override
            public void leave() {}
        });
        stopped.add("b", SIX, every("b", 1));
        stopped.play(after(60), time -> time.isBefore(after(3)));
        assertThat(said).containsExactly("a3", "b1", "b2");
    }

    @Test
    void somebody_who_has_done_all_leaves_the_others_to_go_on() {
        turns.add("once", SIX, clock -> said.add("once"));
        turns.add("a", SIX, every("a", 3));
        turns.play(after(6), time -> true);
        assertThat(said).containsExactly("once", "a3", "a6");
    }

    @Test
    void a_part_that_breaks_ends_the_play_and_says_why() {
        turns.add("a", SIX, every("a", 3));
        turns.add("broken", SIX, clock -> {
            clock.pass(Duration.ofMinutes(4));
            throw new IllegalArgumentException("no such station");
        });
        assertThatThrownBy(() -> turns.play(after(60), time -> true))
                .hasMessageContaining("broken")
                .hasRootCauseMessage("no such station");
        assertThat(said).containsExactly("a3");
    }

    @Test
    void time_without_waiting_shows_each_act_s_time_and_stops_when_told() {
        List<Instant> shown = new ArrayList<>();
        var time = new Running(SIX, Double.POSITIVE_INFINITY, shown::add);
        assertThat(time.comes(after(4))).isTrue();
        assertThat(time.comes(after(4))).isTrue();
        assertThat(shown).containsExactly(after(4));
        time.stop();
        assertThat(time.comes(after(5))).isFalse();
        assertThat(time.now()).isEqualTo(after(4));
    }

    @Test
    void time_that_runs_is_never_shown_beyond_the_act_that_is_next_nor_back() {
        List<Instant> shown = new ArrayList<>();
        var time = new Running(SIX, 6_000, shown::add);
        assertThat(time.comes(after(10))).isTrue();
        assertThat(time.comes(after(20))).isTrue();
        assertThat(shown).isSorted().contains(after(10)).endsWith(after(20));
    }
}
