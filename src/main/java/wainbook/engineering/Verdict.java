package wainbook.engineering;

import java.util.Locale;

/** What a calculation decides. Undecided means that the uncertainty reaches over the limit; it never counts as a pass. */
public enum Verdict {
    PASS,
    FAIL,
    UNDECIDED,
    NONE;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
