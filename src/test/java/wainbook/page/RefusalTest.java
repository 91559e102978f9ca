package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wainbook.act.Reason;

class RefusalTest {

    @Test
    void says_what_is_not_possible_why_and_what_to_do() {
        Refusal refusal =
                Refusal.of(Reason.of("looks.itemsOpen", Reason.WORKS_RULE, 2).liftedAt("/gate"));
        assertThat(refusal.what()).isEqualTo("This gate does not open yet.");
        assertThat(refusal.why()).isEqualTo("2 items are open at this stage.");
        assertThat(refusal.next()).isEqualTo("Finish the open items.");
        assertThat(refusal.source()).isEqualTo("works rule");
        assertThat(refusal.lift()).contains("/gate");
    }

    @Test
    void a_full_stop_in_a_name_ends_no_sentence() {
        Refusal refusal = Refusal.of(Reason.of("looks.ownWork", "ISO 9001:2015 8.6", 3, "A. Lindqvist, R. Mensah"));
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
