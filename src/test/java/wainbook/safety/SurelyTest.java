package wainbook.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.safety.SafetySaying.NearMissReported;

/** What must not be refused is written, whatever the first try came to. */
class SurelyTest {

    private static final UUID ID = new UUID(0, 1);
    private static final Outcome<Entry> DONE = Outcome.done(new Entry(
            ID,
            Subject.works(),
            1,
            Moment.of("7001", Instant.parse("2026-03-10T09:00:00Z")),
            "0".repeat(64),
            new NearMissReported(1, Optional.empty(), Optional.empty(), Optional.empty())));

    private final List<UUID> tried = new ArrayList<>();

    @Test
    void what_is_written_at_once_is_written_once() {
        assertThat(written(DONE)).isEqualTo(DONE);
        assertThat(tried).containsExactly(ID);
    }

    @Test
    void other_words_under_the_same_id_are_kept_as_one_more_under_an_id_that_leads_back_to_nobody() {
        assertThat(written(refused("ledger.otherUnderSameId"), DONE)).isEqualTo(DONE);
        assertThat(tried).hasSize(2).startsWith(ID).doesNotHaveDuplicates();
        assertThat(tried.get(1).version()).as("drawn by chance").isEqualTo(4);
    }

    @Test
    void what_lost_a_race_is_tried_once_more_under_its_own_id() {
        assertThat(written(refused("ledger.writtenMeanwhile"), DONE)).isEqualTo(DONE);
        assertThat(tried).containsExactly(ID, ID);
    }

    @Test
    void any_other_refusal_is_handed_on() {
        Outcome<Entry> other = refused("order.unknown");
        assertThat(written(other)).isEqualTo(other);
        assertThat(tried).containsExactly(ID);
    }

    @SafeVarargs
    private Outcome<Entry> written(Outcome<Entry>... answers) {
        return Surely.written(ID, id -> {
            tried.add(id);
            return answers[tried.size() - 1];
        });
    }

    private static Outcome<Entry> refused(String key) {
        return Outcome.refused(Reason.of(key, Reason.WORKS_RULE));
    }
}
