package wainbook.line.forecast.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wainbook.line.forecast.state.EntryRule.Came;

/** When a line moves and in which order vehicles come onto it, as the record shows. */
class MoveTimesTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    /** A Monday; clocks go forward on the 29th. */
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 16);

    private static final Instant NOW = at(FIRST.plusDays(21), "05:00");

    @Test
    void a_line_that_moves_at_the_same_times_every_day_is_paced_and_by_the_local_clock() {
        var moves = new ArrayList<Instant>();
        days().forEach(day -> List.of("06:34", "08:12", "09:50").forEach(time -> moves.add(at(day, time))));
        moves.add(at(FIRST, "08:31"));
        moves.add(at(FIRST.plusDays(1), "10:20"));

        assertThat(MoveTimes.of(moves.stream(), LONDON, NOW).minutes())
                .containsExactly(6 * 60 + 34, 8 * 60 + 12, 9 * 60 + 50);
    }

    @Test
    void a_line_that_moves_whenever_it_is_ready_is_not_paced() {
        var chance = new Random(7);
        var moves = new ArrayList<Instant>();
        days().forEach(day -> {
            for (int i = 0; i < 5; i++) {
                moves.add(at(day, "06:30").plusSeconds(chance.nextInt(8 * 3600)));
            }
        });

        assertThat(MoveTimes.of(moves.stream(), LONDON, NOW).none()).isTrue();
    }

    @Test
    void one_day_says_nothing_and_what_is_long_ago_does_not_count() {
        assertThat(MoveTimes.of(
                                days().stream().limit(1).map(day -> at(day, "06:34")),
                                LONDON,
                                at(FIRST.plusDays(3), "05:00"))
                        .none())
                .isTrue();
        assertThat(MoveTimes.of(days().stream().map(day -> at(day, "06:34")), LONDON, NOW.plusSeconds(60L * 86_400))
                        .none())
                .isTrue();
    }

    @Test
    void entries_are_foretold_by_the_rule_that_foretold_those_before() {
        List<Came> asOrdered = List.of(came(1, 30, 10), came(2, 20, 11), came(3, 25, 12));
        assertThat(EntryRule.of(asOrdered)).isEqualTo(new EntryRule(true, 3, 3));

        List<Came> asPromised = List.of(came(3, 20, 10), came(1, 30, 11), came(2, 40, 12));
        assertThat(EntryRule.of(asPromised)).isEqualTo(new EntryRule(false, 3, 3));
        assertThat(EntryRule.of(List.of())).isEqualTo(new EntryRule(false, 0, 0));
    }

    @Test
    void a_vehicle_ordered_after_another_had_entered_was_no_choice() {
        assertThat(EntryRule.of(List.of(came(1, 30, 5), came(6, 20, 9))).pairs())
                .isZero();
    }

    private static Came came(int ordered, int promised, int entered) {
        return new Came(
                at(FIRST.plusDays(ordered), "08:00"), FIRST.plusDays(promised), at(FIRST.plusDays(entered), "09:00"));
    }

    private static List<LocalDate> days() {
        return FIRST.datesUntil(FIRST.plusDays(19))
                .filter(day -> day.getDayOfWeek().getValue() < 6)
                .toList();
    }

    private static Instant at(LocalDate day, String time) {
        return day.atTime(LocalTime.parse(time)).atZone(LONDON).toInstant();
    }
}
