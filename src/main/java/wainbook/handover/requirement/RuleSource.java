package wainbook.handover.requirement;

/** Where a rule comes from, and how that is known. */
public record RuleSource(String document, String clause, Standing standing) {

    /** How a source is known. */
    public enum Standing {
        /** The text, or an extract of it, was read. */
        SEEN,
        /** Recalled, or read in second-hand accounts only: somebody has to look it up. */
        MEMORY,
        /** Good practice of the trade, no legal source. */
        PRACTICE
    }
}
