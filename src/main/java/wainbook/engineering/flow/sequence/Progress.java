package wainbook.engineering.flow.sequence;

/**
 * How far a search is.
 *
 * @param orders tried of {@code most}; it may end before
 * @param lateToday mean late working minutes in today's order with the draws of the search
 * @param leastLate in the least late order tried so far
 */
public record Progress(Phase phase, int orders, int most, double lateToday, double leastLate) {

    /** What it is at. */
    public enum Phase {
        SEARCHING,
        COMPARING
    }
}
