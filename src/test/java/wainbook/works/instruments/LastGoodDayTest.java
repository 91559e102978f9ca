package wainbook.works.instruments;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Six months from first issue: OSHA letter of 25 January 2019 on 29 CFR 1910.137, read in a public copy. */
class LastGoodDayTest {

    private static final Optional<LocalDate> LONG = day("2030-12-31");

    @Test
    void gloves_are_tested_again_six_months_after_their_first_issue() {
        assertThat(gloves(LONG, day("2026-01-05"), day("2026-01-10"))).contains(LocalDate.parse("2026-07-10"));
    }

    @Test
    void a_test_after_the_first_issue_counts_from_its_own_day() {
        assertThat(gloves(LONG, day("2026-07-01"), day("2026-01-10"))).contains(LocalDate.parse("2027-01-01"));
    }

    @Test
    void gloves_in_store_are_first_issued_within_twelve_months_of_their_test() {
        assertThat(gloves(LONG, day("2026-01-05"), Optional.empty())).contains(LocalDate.parse("2027-01-05"));
    }

    @Test
    void a_certificate_that_ends_earlier_wins() {
        assertThat(gloves(day("2026-06-30"), day("2026-01-05"), day("2026-01-10")))
                .contains(LocalDate.parse("2026-06-30"));
    }

    @Test
    void nothing_is_used_past_the_day_printed_on_it() {
        assertThat(new LastGoodDay("mat", LONG, day("2026-01-05"), Optional.empty(), day("2027-03-31")).day())
                .contains(LocalDate.parse("2027-03-31"));
    }

    @Test
    void an_issue_says_nothing_of_a_torque_wrench() {
        assertThat(new LastGoodDay("torque-setting", LONG, day("2026-01-05"), day("2026-01-06"), Optional.empty())
                        .day())
                .isEqualTo(LONG);
    }

    @Test
    void without_a_certificate_there_is_no_good_day() {
        assertThat(gloves(Optional.empty(), day("2026-01-05"), day("2026-01-10")))
                .isEmpty();
    }

    private static Optional<LocalDate> gloves(
            Optional<LocalDate> certificate, Optional<LocalDate> tested, Optional<LocalDate> firstIssued) {
        return new LastGoodDay(LastGoodDay.GLOVES, certificate, tested, firstIssued, Optional.empty()).day();
    }

    private static Optional<LocalDate> day(String day) {
        return Optional.of(LocalDate.parse(day));
    }
}
