package wainbook.handover;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.requirement.Requirement;
import wainbook.page.Words;

/** How a document stands: what its rule says, and what was noted of it last. */
public enum Standing {
    NEEDED("warn", "alert"),
    APPLIED_FOR("quiet", "clock"),
    IN_HAND("safe", "done"),
    EXPIRED("danger", "fail"),
    REFUSED("danger", "fail"),
    WAIVED("quiet", "edit"),
    NOT_NEEDED("quiet", "off"),
    ASK("warn", "ask");

    private final String meaning;
    private final String sign;

    Standing(String meaning, String sign) {
        this.meaning = meaning;
        this.sign = sign;
    }

    /** A fact that nobody knows keeps the question open, whatever was noted: the set may change with it. */
    public static Standing of(Requirement requirement, Optional<DocumentNoted> noted, LocalDate day) {
        return switch (requirement.answer()) {
            case NOT_NEEDED -> NOT_NEEDED;
            case NEEDED -> noted.map(said -> noted(said, day)).orElse(NEEDED);
            case ASK ->
                noted.filter(said -> requirement.missingFacts().isEmpty())
                        .map(said -> noted(said, day))
                        .orElse(ASK);
        };
    }

    private static Standing noted(DocumentNoted said, LocalDate day) {
        return switch (said.state()) {
            case APPLIED_FOR -> APPLIED_FOR;
            case IN_HAND -> said.validUntil().filter(day::isAfter).isPresent() ? EXPIRED : IN_HAND;
            case REFUSED -> REFUSED;
            case WAIVED -> WAIVED;
        };
    }

    /** Whether somebody still has to do something about it. */
    public boolean isOpen() {
        return switch (this) {
            case NEEDED, APPLIED_FOR, EXPIRED, REFUSED, ASK -> true;
            case IN_HAND, WAIVED, NOT_NEEDED -> false;
        };
    }

    public String word() {
        return Words.of("handover.standing." + name());
    }

    public String meaning() {
        return meaning;
    }

    public String sign() {
        return sign;
    }
}
