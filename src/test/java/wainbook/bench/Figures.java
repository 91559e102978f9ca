package wainbook.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What came of a comparison. The ratio is taken round by round, since the two of a round met the same machine. */
record Figures(Comparison comparison, List<Round> rounds) {

    /** One go of each, in nanoseconds. */
    record Round(long candidate, long baseline) {
        double ratio() {
            return (double) candidate / baseline;
        }
    }

    static final List<String> HEAD = List.of(
            "what",
            "median",
            "for one",
            "one in two between",
            "baseline",
            "its median",
            "ratio",
            "ratio one in two",
            "rounds");

    Figures {
        rounds = List.copyOf(rounds);
    }

    List<String> row() {
        return List.of(
                comparison.what(),
                time(at(0.5, Round::candidate)),
                time(at(0.5, Round::candidate) / comparison.things()),
                time(at(0.25, Round::candidate)) + " – " + time(at(0.75, Round::candidate)),
                comparison.against(),
                time(at(0.5, Round::baseline)),
                number(at(0.5, Round::ratio)),
                number(at(0.25, Round::ratio)) + " – " + number(at(0.75, Round::ratio)),
                String.valueOf(rounds.size()));
    }

    double ratio() {
        return at(0.5, Round::ratio);
    }

    /** The value with so large a share of the rounds at or below it. */
    private double at(double share, ToDoubleFunction<Round> of) {
        double[] sorted = rounds.stream().mapToDouble(of).sorted().toArray();
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    private static String time(double nanoseconds) {
        if (nanoseconds >= 1e9) {
            return number(nanoseconds / 1e9) + " s";
        }
        return nanoseconds >= 1e6 ? number(nanoseconds / 1e6) + " ms" : number(nanoseconds / 1e3) + " µs";
    }

    /** Three figures of it: more would say more than was measured. */
    private static String number(double figure) {
        int whole = (int) Math.floor(Math.log10(figure)) + 1;
        return String.format(Locale.ROOT, "%." + Math.max(0, 3 - whole) + "f", figure);
    }
}
