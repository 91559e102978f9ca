package wainbook.engineering.measurement;

import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Whether the last digits of readings fall evenly: χ² with nine degrees of freedom over the ten digits, and the chance of so
 * many noughts and fives together where each comes one time in ten.
 */
public final class DigitPreference implements Calculation<DigitPreference.Inputs, DigitPreference.Results> {

    private static final double ROUND_SHARE = 0.2;
    private static final int MOST = 1_000_000;

    /** @param counts how often 0, 1, … 9 was the last digit */
    public record Inputs(@Size(from = 10, to = 10) List<@Domain(from = 0, to = MOST) Integer> counts)
            implements Checked {
        public Inputs {
            counts = List.copyOf(counts);
        }

        int all() {
            return counts.stream().mapToInt(Integer::intValue).sum();
        }

        @Override
        public List<Fault> faults() {
            return all() > 0 ? List.of() : List.of(Fault.of("counts[0]", "above", 0.0));
        }
    }

    /** @param pRound of at least so many noughts and fives */
    public record Results(double chiSquare, double pEven, double pRound) {}

    @Override
    public String name() {
        return "digit-preference";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("Pages on indicators of research integrity", "last digits, at least 50 values"),
                Source.memory("χ² and binomial test", "any textbook"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.figuresAccuseNobody"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double even = in.all() / 10.0;
        double chi = in.counts().stream()
                .mapToDouble(count -> (count - even) * (count - even) / even)
                .sum();
        double pEven = ChiSquaredDistribution.of(9).survivalProbability(chi);
        int round = in.counts().get(0) + in.counts().get(5);
        double pRound = BinomialDistribution.of(in.all(), ROUND_SHARE).survivalProbability(round - 1);
        return found(
                new Results(chi, pEven, pRound),
                Sentence.brief("engineering.digit-preference.none", in.all(), pEven, pRound),
                Step.of("chiSquare", "χ² = Σ(n − N/10)² / (N/10)", chi, "", "N = %s", in.all()),
                Step.of("roundDigits", "P(X ≥ n0 + n5), X binomial with 0.2", pRound, "", "%s of %s", round, in.all()));
    }
}
