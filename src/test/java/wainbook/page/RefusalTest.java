package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.page.api.Problem;

class RefusalTest {

    private static final Formats LONDON = new Formats(ZoneId.of("Europe/London"));

    @Test
    void times_are_local_to_the_works_and_to_the_second() {
        var reason =
                Reason.of("station.stillWaiting", Reason.WORKS_RULE, 10, Instant.parse("2026-07-01T13:30:07.250000Z"));
        assertThat(Refusal.of(reason, LONDON).why()).isEqualTo("It takes 10 minutes and ends at 1 Jul 2026 14:30:07.");
        assertThat(Refusal.of(reason, new Formats(ZoneId.of("Asia/Kolkata"))).why())
                .endsWith("1 Jul 2026 19:00:07.");
        assertThat(Problem.of(List.of(reason)).reasons().get(0).text()).contains("2026-07-01T13:30:07.250Z");
        var waiting = Reason.of("isolation.waitNotOver", Reason.PRACTICE, "2026-12-01T13:30:00Z");
        assertThat(Refusal.of(waiting, LONDON).why()).contains("until 1 Dec 2026 13:30:00 by the server’s clock");
    }

    @Test
    void days_are_written_as_everywhere_else_on_pages() {
        var reason = Reason.of("works.competenceExpired", Reason.WORKS_RULE, "HV", LocalDate.of(2026, 3, 2));
        assertThat(Refusal.of(reason, LONDON).why()).isEqualTo("Your competence HV ended on 2 Mar 2026.");
    }

    @Test
    void what_only_looks_like_a_time_is_left_as_it_is() {
        for (String text : List.of(
                "2026-07-01T13:30",
                "2026-07-01 13:30:00Z",
                "PK-2026-07-01",
                "20260701",
                "2026-02-31",
                "2026-02-31T13:30:00Z")) {
            assertThat(LONDON.argument(text)).isEqualTo(text);
        }
    }

    @Test
    void says_what_is_not_possible_why_and_what_to_do() {
        Refusal refusal =
                Refusal.of(Reason.of("looks.itemsOpen", Reason.WORKS_RULE, 2).liftedAt("/gate"), LONDON);
        assertThat(refusal.what()).isEqualTo("This gate does not open yet.");
        assertThat(refusal.why()).isEqualTo("2 items are open at this stage.");
        assertThat(refusal.next()).isEqualTo("Finish the open items.");
        assertThat(refusal.source()).isEqualTo("works rule");
        assertThat(refusal.lift()).contains("/gate");
    }

    @Test
    void a_full_stop_in_a_name_ends_no_sentence() {
        Refusal refusal =
                Refusal.of(Reason.of("looks.ownWork", "ISO 9001:2015 8.6", 3, "A. Lindqvist, R. Mensah"), LONDON);
        assertThat(refusal.next()).isEqualTo("Ask one of: A. Lindqvist, R. Mensah.");
    }

    @Test
    void a_bar_parts_where_sentences_cannot() {
        assertThat(Refusal.parts("No. Never | Because | Wait. Then ask."))
                .containsExactly("No. Never", "Because", "Wait. Then ask.");
    }

    @Test
    void more_sentences_than_three_all_say_what_to_do() {
        assertThat(Refusal.parts("A. B. C. D.")).containsExactly("A.", "B.", "C. D.");
    }

    @Test
    void of_two_sentences_the_last_says_what_to_do() {
        assertThat(Refusal.parts("There is none: it was voided. Record it anew."))
                .containsExactly("There is none: it was voided.", "", "Record it anew.");
    }
}
