package wainbook.trace.campaign.act;

import java.util.Optional;
import wainbook.act.Reason;

/** Bounds of what is typed. */
final class Typed {

    static final int TITLE = 120;
    static final int WORDS = 2000;

    private Typed() {}

    /** The reason against a text that is empty or too long, at its field. */
    static Optional<Reason> against(String text, int longest, String field) {
        return text.isBlank() || text.length() > longest
                ? Optional.of(Reason.of("campaign.wordsMissing", Reason.WORKS_RULE, longest)
                        .liftedAt("#" + field))
                : Optional.empty();
    }
}
