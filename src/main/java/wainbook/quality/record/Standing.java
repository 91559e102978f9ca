package wainbook.quality.record;

import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.quality.QualitySaying.QuestionAnswered;
import wainbook.quality.QualitySaying.QuestionSettled;

/**
 * A question with what was said of it.
 *
 * @param toQualityAt when it goes to the quality engineer if its person says nothing
 */
public record Standing(Question question, Optional<Entry> answer, Optional<Entry> settlement, Instant toQualityAt) {

    public boolean settled() {
        return settlement.isPresent();
    }

    /** Whether it is the quality engineer's: answered, or left alone for two working days. */
    public boolean withQuality(Instant now) {
        return answer.isPresent() || !now.isBefore(toQualityAt);
    }

    public QuestionAnswered answered() {
        return (QuestionAnswered) answer.orElseThrow().saying();
    }

    public QuestionSettled settledAs() {
        return (QuestionSettled) settlement.orElseThrow().saying();
    }
}
