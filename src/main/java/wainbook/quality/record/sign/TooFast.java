package wainbook.quality.record.sign;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Made;

/** Fasteners of a joint recorded sooner after the same person's entry before than hands can tighten them. */
public final class TooFast {

    private static final int LEAST = 4;

    /** Seconds a fastener below which nobody tightens: common practice, no source. */
    private static final int FLOOR_S = 4;

    private TooFast() {}

    public static Optional<Question> in(Made made, Optional<Made> before) {
        if (made.size() < LEAST || made.readings().get(0).joint().isEmpty()) {
            return Optional.empty();
        }
        return before.map(former -> Duration.between(former.at(), made.at()).toSeconds())
                .filter(gap -> gap < (long) FLOOR_S * made.size())
                .map(gap -> new Question(
                        Rule.TOO_FAST,
                        made.person(),
                        List.of(
                                before.orElseThrow().readings().get(0),
                                made.readings().get(0)),
                        made.at(),
                        List.of(
                                String.valueOf(made.size()),
                                String.valueOf(gap),
                                String.valueOf(FLOOR_S * made.size())),
                        1));
    }
}
