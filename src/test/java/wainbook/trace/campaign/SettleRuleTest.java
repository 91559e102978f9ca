package wainbook.trace.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.trace.campaign.CampaignSaying.End;

/** What a vehicle's end must be shown by. */
class SettleRuleTest {

    private static final long HEAD = 40;
    private static final long LAST = 50;

    @Test
    void what_was_put_right_here_is_shown_by_an_entry_made_since_it_came_into_scope() {
        assertThat(against(End.PUT_RIGHT_HERE, Optional.of(41L), false, false)).isEmpty();
        assertThat(against(End.PUT_RIGHT_HERE, Optional.of(50L), false, false)).isEmpty();
        assertThat(keys(against(End.PUT_RIGHT_HERE, Optional.of(40L), false, false)))
                .containsExactly("campaign.entryUnfit");
        assertThat(keys(against(End.PUT_RIGHT_HERE, Optional.of(51L), false, false)))
                .containsExactly("campaign.entryUnfit");
        assertThat(keys(against(End.PUT_RIGHT_HERE, Optional.empty(), true, true)))
                .containsExactly("campaign.unshownPUTRIGHTHERE");
    }

    @Test
    void what_others_did_and_that_it_was_scrapped_is_shown_by_a_file() {
        for (End end : List.of(End.PUT_RIGHT_BY_OPERATOR, End.SCRAPPED)) {
            assertThat(against(end, Optional.empty(), true, false)).isEmpty();
            assertThat(against(end, Optional.empty(), false, true)).hasSize(1);
        }
    }

    @Test
    void out_of_reach_is_whoever_was_written_to() {
        assertThat(against(End.OUT_OF_REACH, Optional.empty(), false, true)).isEmpty();
        assertThat(against(End.OUT_OF_REACH, Optional.empty(), false, false)).hasSize(1);
    }

    @Test
    void that_nothing_is_wrong_needs_its_reason_only() {
        assertThat(against(End.NOT_NEEDED, Optional.empty(), false, false)).isEmpty();
    }

    @Test
    void every_refusal_has_its_words() {
        for (End end : End.values()) {
            against(end, Optional.empty(), false, false)
                    .forEach(reason -> assertThat(
                                    Words.of(reason.key(), reason.arguments().toArray()))
                            .isNotBlank());
        }
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static List<Reason> against(End end, Optional<Long> entry, boolean file, boolean letter) {
        return SettleRule.against(end, entry, file, HEAD, LAST, letter);
    }
}
