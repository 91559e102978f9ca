package wainbook.engineering;

import java.util.Optional;

/**
 * What was compared with which limits, by which rule.
 *
 * @param value the figure that was judged, not rounded
 * @param expandedUncertainty half of its interval at k = 2, in the same unit; 0 where no accuracy was given
 * @param lower what it must reach, where there is such a limit
 * @param upper what it must stay under, or not exceed: the rule says which
 */
public record Decision(
        Verdict verdict,
        Sentence rule,
        double value,
        double expandedUncertainty,
        String unit,
        Optional<Double> lower,
        Optional<Double> upper) {

    public Decision as(Verdict other) {
        return new Decision(other, rule, value, expandedUncertainty, unit, lower, upper);
    }

    /** Three texts a calculation: {@code engineering.bonding.pass}, {@code .fail} and {@code .undecided}. */
    public Sentence because(String calculation, Object... figures) {
        return Sentence.of("engineering." + calculation + "." + verdict, figures);
    }
}
