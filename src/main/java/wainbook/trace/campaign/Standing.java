package wainbook.trace.campaign;

import wainbook.page.Words;

/** How far a campaign has come for one vehicle. */
public enum Standing {
    IN_SCOPE(true, "alert", "danger"),
    LETTER_SENT(true, "document", "warn"),
    ANSWERED(true, "person", "warn"),
    REWORK_ORDERED(true, "clock", "warn"),
    BACK_IN_WORKS(true, "wrench", "warn"),
    DONE(false, "done", "safe"),
    SETTLED(false, "done", "safe"),
    TAKEN_OUT(false, "void", "quiet");

    private final boolean open;
    private final String sign;
    private final String meaning;

    Standing(boolean open, String sign, String meaning) {
        this.open = open;
        this.sign = sign;
        this.meaning = meaning;
    }

    /** Whether something is still to be done for the vehicle. */
    public boolean open() {
        return open;
    }

    public String sign() {
        return sign;
    }

    public String meaning() {
        return meaning;
    }

    public String word() {
        return Words.of("campaign.standing." + name());
    }
}
