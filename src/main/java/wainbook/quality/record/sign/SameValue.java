package wainbook.quality.record.sign;

import java.util.List;
import java.util.Optional;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Chance;
import wainbook.quality.record.made.Figures;
import wainbook.quality.record.made.Made;
import wainbook.quality.record.made.Usual;
import wainbook.quality.record.made.Usual.Spread;

/** The same value four times or more in a row within one entry, where the usual scatter makes that next to impossible. */
public final class SameValue {

    private static final int LEAST = 4;

    private SameValue() {}

    public static Optional<Question> in(Made made, Usual usual, double rarely) {
        int run = 1;
        int longest = 1;
        int end = 0;
        for (int i = 1; i < made.size(); i++) {
            boolean same = made.values().get(i).equals(made.values().get(i - 1))
                    && made.readings().get(i).column()
                            == made.readings().get(i - 1).column();
            run = same ? run + 1 : 1;
            if (run > longest) {
                longest = run;
                end = i;
            }
        }
        if (longest < LEAST) {
            return Optional.empty();
        }
        int times = longest;
        var reading = made.readings().get(end);
        return usual.of(reading).flatMap(spread -> {
            double chance = chance(spread, times, made.size());
            return chance < rarely
                    ? Optional.of(new Question(
                            Rule.SAME_VALUE,
                            made.person(),
                            List.of(reading),
                            made.at(),
                            List.of(
                                    String.valueOf(times),
                                    reading.value().toPlainString(),
                                    reading.unit(),
                                    Figures.of(spread.s()),
                                    String.valueOf(spread.n())),
                            chance))
                    : Optional.empty();
        });
    }

    /** At any of the places where such a run can begin. */
    private static double chance(Spread spread, int times, int of) {
        return Math.min(1, (of - times + 1) * Chance.allEqual(spread, times));
    }
}
