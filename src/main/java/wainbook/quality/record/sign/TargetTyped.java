package wainbook.quality.record.sign;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Chance;
import wainbook.quality.record.made.Made;
import wainbook.quality.record.made.Usual;

/** More than three in ten readings of an entry are exactly the target: perhaps what the tool was set to, not what it showed. */
public final class TargetTyped {

    private static final int LEAST = 4;
    private static final double SHARE = 0.3;

    private TargetTyped() {}

    public static Optional<Question> in(Made made, Usual usual, double rarely) {
        var first = made.readings().get(0);
        if (first.target().isEmpty() || made.size() < LEAST) {
            return Optional.empty();
        }
        double target = first.target().get().doubleValue();
        int hits = (int) made.values().stream().filter(value -> value == target).count();
        if (hits < 3 || hits <= SHARE * made.size()) {
            return Optional.empty();
        }
        return usual.of(first).flatMap(spread -> {
            double chance = BinomialDistribution.of(made.size(), Chance.is(spread, target))
                    .survivalProbability(hits - 1);
            return chance < rarely
                    ? Optional.of(new Question(
                            Rule.TARGET_TYPED,
                            made.person(),
                            List.of(first),
                            made.at(),
                            List.of(
                                    String.valueOf(hits),
                                    String.valueOf(made.size()),
                                    first.target().get().toPlainString(),
                                    first.unit()),
                            chance))
                    : Optional.empty();
        });
    }
}
