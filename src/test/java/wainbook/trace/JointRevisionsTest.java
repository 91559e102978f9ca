package wainbook.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.trace.JointRevisions.Release;

/** Which revision of the works' joints an entry was made by. */
class JointRevisionsTest {

    private static final Instant FIRST = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant SECOND = FIRST.plusSeconds(3_600);

    private final JointRevisions revisions = new JointRevisions(List.of(new Release(1, FIRST), new Release(2, SECOND)));

    @Test
    void the_revision_in_force_is_the_last_that_was_released_by_then() {
        assertThat(revisions.at(FIRST.minusMillis(1))).isEmpty();
        assertThat(revisions.at(FIRST)).contains(1);
        assertThat(revisions.at(SECOND.minusMillis(1))).contains(1);
        assertThat(revisions.at(SECOND)).contains(2);
    }

    @Test
    void the_entries_of_a_revision_end_where_the_next_begins() {
        var first = revisions.sought("MOTOR-MOUNT/1").orElseThrow();
        assertThat(first.joint()).contains("MOTOR-MOUNT");
        assertThat(first.from()).isEqualTo(FIRST);
        assertThat(first.until()).contains(SECOND);
        assertThat(revisions.sought("MOTOR-MOUNT/2").orElseThrow().until()).isEqualTo(Optional.empty());
        assertThat(revisions.sought("JOINTS/2").orElseThrow().joint()).isEmpty();
        assertThat(revisions.sought("MOTOR-MOUNT/3")).isEmpty();
        assertThat(revisions.sought("MOTOR-MOUNT")).isEmpty();
    }

    @Test
    void an_entry_is_found_as_its_joint_and_as_all_joints_of_its_revision() {
        var row = new TracedRow();
        row.shown = "MOTOR-MOUNT";
        row.at = SECOND;
        assertThat(revisions.of(row)).extracting(Mention::code).containsExactly("MOTOR-MOUNT/2", "JOINTS/2");
        row.at = FIRST.minusSeconds(1);
        assertThat(revisions.of(row)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"MOTOR-MOUNT/2, MOTOR-MOUNT", "MOTOR-, MOTOR-", "JOINTS/2, ''", "JOI, ''", "'', ''"})
    void what_a_code_begins_with_leads_to_the_joints_it_can_mean(String beginning, String joint) {
        assertThat(JointRevisions.joint(beginning)).isEqualTo(joint);
    }
}
