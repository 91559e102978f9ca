package wainbook.engineering;

import java.util.Optional;

/**
 * A limit with its guard band (ILAC-G8:09/2019 4.2.2, w = U): a value passes only if it would still hold with its whole
 * expanded uncertainty (k = 2) against it, fails if it would not hold even with all of it in favour, and is undecided
 * between. Values are compared in 12 significant digits.
 */
public record Limit(Sense sense, double value) {

    public enum Sense {
        AT_LEAST,
        AT_MOST,
        BELOW
    }

    public static Limit atLeast(double value) {
        return new Limit(Sense.AT_LEAST, value);
    }

    public static Limit atMost(double value) {
        return new Limit(Sense.AT_MOST, value);
    }

    public static Limit below(double value) {
        return new Limit(Sense.BELOW, value);
    }

    /** Figures that are no numbers pass nothing. */
    public Decision judge(double measured, double expandedUncertainty, String unit) {
        if (!Double.isFinite(measured) || !Double.isFinite(value) || Double.isNaN(expandedUncertainty)) {
            return decided(Verdict.FAIL, measured, expandedUncertainty, unit);
        }
        double against = sense == Sense.AT_LEAST ? -expandedUncertainty : expandedUncertainty;
        Verdict verdict = Verdict.FAIL;
        if (holds(measured + against)) {
            verdict = Verdict.PASS;
        } else if (holds(measured - against)) {
            verdict = Verdict.UNDECIDED;
        }
        return decided(verdict, measured, expandedUncertainty, unit);
    }

    private Decision decided(Verdict verdict, double measured, double expandedUncertainty, String unit) {
        Optional<Double> bound = Optional.of(value);
        return new Decision(
                verdict,
                rule(),
                measured,
                expandedUncertainty,
                unit,
                sense == Sense.AT_LEAST ? bound : Optional.empty(),
                sense == Sense.AT_LEAST ? Optional.empty() : bound);
    }

    private boolean holds(double figure) {
        int side = Double.compare(Plain.compared(figure), Plain.compared(value));
        return switch (sense) {
            case AT_LEAST -> side >= 0;
            case AT_MOST -> side <= 0;
            case BELOW -> side < 0;
        };
    }

    private Sentence rule() {
        return Sentence.of(
                switch (sense) {
                    case AT_LEAST -> "engineering.rule.atLeast";
                    case AT_MOST -> "engineering.rule.atMost";
                    case BELOW -> "engineering.rule.below";
                });
    }
}
