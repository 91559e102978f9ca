package wainbook.handover.requirement;

import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/**
 * What a rule says about one vehicle on one day.
 *
 * @param because the one reason for the answer; its source is the rule's
 * @param note something a person should know beside the answer
 * @param missingFacts what would decide it, sorted
 * @param documents how many documents are needed; 0 when none, and when asked
 */
public record Requirement(
        Rule rule, Answer answer, Reason because, Optional<Reason> note, List<String> missingFacts, int documents) {

    /** Needed, not needed, or a question to a person. */
    public enum Answer {
        NEEDED("needed"),
        NOT_NEEDED("not-needed"),
        ASK("ask");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Requirement {
        missingFacts = List.copyOf(missingFacts);
    }

    /** Whether the vehicle may not leave, or not be used on a road, while this document is not in hand. */
    public boolean bars() {
        return answer == Answer.NEEDED && rule.mayBarHandover();
    }
}
