package wainbook.quality.record;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.measurement.DigitPreference;
import wainbook.quality.reading.Reading;
import wainbook.quality.record.made.Figures;
import wainbook.quality.record.made.Usual.Spread;

/** What one person read with one instrument in one month, and how unlikely that is, test by test. */
final class Group {

    private static final int LEAST_DIGITS = 50;
    private static final int LEAST_FOR_ALL_DIGITS = 100;
    private static final int LEAST_SCATTER = 20;
    private static final int LEAST_INSIDE = 30;
    private static final int LEAST_HITS = 3;

    /** The outermost part of half a tolerance, and the least share of readings that is believed to fall there. */
    private static final double JUST_INSIDE = 95;

    private static final double LEAST_SHARE = 0.002;

    /** One reading with what was usual when it was made. */
    private record Seen(Reading reading, Spread usual) {
        double standardised() {
            return (reading.value().doubleValue() - usual.mean()) / usual.s();
        }
    }

    private final String person;
    private final String instrument;
    private final YearMonth month;
    private final List<Seen> seen = new ArrayList<>();

    Group(String person, String instrument, YearMonth month) {
        this.person = person;
        this.instrument = instrument;
        this.month = month;
    }

    void add(Reading reading, Spread usual) {
        seen.add(new Seen(reading, usual));
    }

    /** One question for each test that has values enough, with the chance of what it saw; however large that is. */
    List<Question> tested() {
        var tested = new ArrayList<Question>();
        digits().ifPresent(tested::add);
        scatter().ifPresent(tested::add);
        inside().ifPresent(tested::add);
        return tested;
    }

    private Optional<Question> digits() {
        List<Seen> fit =
                seen.stream().filter(one -> one.usual().digitsFallEvenly()).toList();
        if (fit.size() < LEAST_DIGITS) {
            return Optional.empty();
        }
        var counts = new ArrayList<Integer>();
        for (int digit = 0; digit < 10; digit++) {
            int wanted = digit;
            counts.add((int) fit.stream().filter(one -> last(one) == wanted).count());
        }
        return new DigitPreference()
                .of(new DigitPreference.Inputs(counts))
                .fold(
                        working -> Optional.of(working.results()),
                        faults -> Optional.<DigitPreference.Results>empty(),
                        impossible -> Optional.<DigitPreference.Results>empty())
                .map(found -> question(
                        Rule.DIGITS,
                        // χ² is only near the truth far out in the tail with ten values a digit.
                        Math.min(
                                1,
                                2
                                        * (fit.size() < LEAST_FOR_ALL_DIGITS
                                                ? found.pRound()
                                                : Math.min(found.pEven(), found.pRound()))),
                        String.valueOf(fit.size()),
                        String.valueOf(counts.get(0) + counts.get(5))));
    }

    private static int last(Seen one) {
        return (int) (Math.round(Math.abs(one.reading().value().doubleValue())
                        / one.usual().resolution())
                % 10);
    }

    /** Variance of the standardised readings, beside one; both estimates, so that F judges and not χ². */
    private Optional<Question> scatter() {
        if (seen.size() < LEAST_SCATTER) {
            return Optional.empty();
        }
        double mean = seen.stream().mapToDouble(Seen::standardised).average().orElseThrow();
        double variance = seen.stream()
                        .mapToDouble(one -> (one.standardised() - mean) * (one.standardised() - mean))
                        .sum()
                / (seen.size() - 1);
        int leastUsual = seen.stream().mapToInt(one -> one.usual().n()).min().orElseThrow();
        double chance = FDistribution.of(seen.size() - 1.0, leastUsual - 1.0).cumulativeProbability(variance);
        return Optional.of(question(
                Rule.LITTLE_SCATTER, chance, String.valueOf(seen.size()), Figures.percent(Math.sqrt(variance))));
    }

    private Optional<Question> inside() {
        List<Seen> limited =
                seen.stream().filter(one -> one.reading().bothLimits()).toList();
        if (limited.size() < LEAST_INSIDE) {
            return Optional.empty();
        }
        int hits = (int) limited.stream().filter(Group::justInside).count();
        if (hits < LEAST_HITS) {
            return Optional.empty();
        }
        double share = limited.stream().mapToDouble(Group::usually).average().orElseThrow();
        return Optional.of(question(
                Rule.JUST_INSIDE,
                BinomialDistribution.of(limited.size(), Math.max(share, LEAST_SHARE))
                        .survivalProbability(hits - 1),
                String.valueOf(limited.size()),
                String.valueOf(hits)));
    }

    private static double half(Reading reading) {
        return (reading.upper().orElseThrow().doubleValue()
                        - reading.lower().orElseThrow().doubleValue())
                / 2;
    }

    private static double middle(Reading reading) {
        return reading.lower().orElseThrow().doubleValue() + half(reading);
    }

    private static boolean justInside(Seen one) {
        double of = 100 * Math.abs(one.reading().value().doubleValue() - middle(one.reading())) / half(one.reading());
        return of > JUST_INSIDE && of <= 100;
    }

    private static double usually(Seen one) {
        var law = NormalDistribution.of(one.usual().mean(), one.usual().s());
        double from = JUST_INSIDE / 100 * half(one.reading());
        double middle = middle(one.reading());
        return law.probability(middle + from, middle + half(one.reading()))
                + law.probability(middle - half(one.reading()), middle - from);
    }

    private Question question(Rule rule, double chance, String... figures) {
        var all = new ArrayList<>(List.of(instrument + " " + month));
        all.addAll(List.of(figures));
        Reading newest = seen.get(seen.size() - 1).reading();
        return new Question(rule, person, List.of(newest), newest.at(), all, chance);
    }
}
