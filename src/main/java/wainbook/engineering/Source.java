package wainbook.engineering;

import java.util.Locale;

/** Where a formula, a limit or a rule comes from, and how sure we are that it says so. */
public record Source(String document, String clause, Standing standing) {

    /** How a source is known: read in a public copy, recalled, or a habit of the trade without a published source. */
    public enum Standing {
        SEEN,
        MEMORY,
        PRACTICE;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static Source seen(String document, String clause) {
        return new Source(document, clause, Standing.SEEN);
    }

    public static Source memory(String document, String clause) {
        return new Source(document, clause, Standing.MEMORY);
    }

    public static Source practice(String what) {
        return new Source("common practice, no source", what, Standing.PRACTICE);
    }
}
