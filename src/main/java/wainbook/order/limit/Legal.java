package wainbook.order.limit;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Source;

/**
 * What the rules say of one limit: a figure, or a figure that counts until a question is answered, or no figure.
 *
 * @param kg the lower figure as long as something is asked
 * @param rules their ids with their sources, those that made up the figure
 * @param asks what has to be found out, as keys of texts
 */
public record Legal(Optional<Integer> kg, List<Cited> rules, List<Ask> asks) {

    /** A rule that was used. */
    public record Cited(String id, Source source) {}

    /** What is not known. */
    public enum Ask {
        /** Whether another engine is aboard: then it may not be a vehicle without emissions. */
        OTHER_ENGINE,
        /** How much the technology weighs more. */
        EXTRA_MASS,
        /** Twin tyres and air suspension. */
        TWIN_AIR,
        /** What the distance of the axles allows: the factor is recalled, or an allowance meets it, for which nothing was found. */
        SPACING,
        /** The first day of a rule is in doubt. */
        DAY_IN_DOUBT,
        /** No rule fits. */
        NO_RULE
    }

    public Legal {
        rules = List.copyOf(rules);
        asks = List.copyOf(asks);
    }

    static Legal none() {
        return new Legal(Optional.empty(), List.of(), List.of(Ask.NO_RULE));
    }

    public boolean sure() {
        return asks.isEmpty();
    }
}
