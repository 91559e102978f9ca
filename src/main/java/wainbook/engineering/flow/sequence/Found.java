package wainbook.engineering.flow.sequence;

import java.util.List;

/**
 * What a search came to. It is never called the best: only that all orders were tried, if they were.
 *
 * @param today and {@code order}: names of those that wait
 * @param tried orders, of so many {@code possible}
 * @param ending why it ended
 * @param lateWhenSearched mean late working minutes of the order with the draws it was sought with, and those of today's; no figure to
 *     tell, since the search has fitted them
 */
public record Found(
        Verdict verdict,
        List<String> today,
        List<String> order,
        int tried,
        double possible,
        Ending ending,
        int draws,
        double lateWhenSearched,
        double lateTodayWhenSearched,
        Comparison comparison) {

    /** What is to be done about it. */
    public enum Verdict {
        /** In no draw of the search is anybody late in today's order. */
        NOBODY_LATE,
        /** None of the orders tried was less late. */
        NONE_BETTER,
        /** One was, but on fresh draws its gain cannot be told from nothing. */
        NOT_SHOWN,
        /** Its gain is less than {@link Comparison#LEAST_MINUTES}. */
        TOO_LITTLE,
        BETTER
    }

    /** Why it ended. */
    public enum Ending {
        ALL_TRIED,
        /** From each start, until no move of one vehicle betters the order. */
        NO_MOVE_BETTERS,
        BUDGET,
        STOPPED
    }

    public Found {
        today = List.copyOf(today);
        order = List.copyOf(order);
    }
}
