package wainbook.quality.record.made;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.quality.reading.Reading;

/**
 * How readings of a thing that passed have scattered so far; one that failed would widen it for all the others. Only what was
 * read before counts, so that a question once asked stays as it was asked. Mean and sum of squares are carried on value by value (Welford, Technometrics 4(3), 1962; from memory).
 */
public final class Usual {

    /** Below so many values nothing is said of what is usual. */
    static final int LEAST = 40;

    /** @param resolution of the last digit that was written */
    public record Spread(int n, double mean, double s, double resolution) {

        /** Whether the last digit of such readings falls evenly: their scatter is wide beside ten of its steps. */
        public boolean digitsFallEvenly() {
            return s >= 6 * resolution;
        }
    }

    private static final class Sum {
        private int n;
        private double mean;
        private double squares;
        private int scale;

        private void add(Reading reading) {
            double value = reading.value().doubleValue();
            n++;
            double before = value - mean;
            mean += before / n;
            squares += before * (value - mean);
            scale = Math.max(scale, reading.value().scale());
        }
    }

    private final Map<String, Sum> sums = new HashMap<>();

    /** What is alike: the same thing, column and limits. */
    private static String key(Reading reading) {
        return reading.joint().orElse(reading.stage() + ":" + reading.item())
                + "/" + reading.column()
                + "/" + reading.lower().map(Object::toString).orElse("")
                + "/" + reading.upper().map(Object::toString).orElse("");
    }

    public void add(Made made) {
        made.readings().stream()
                .filter(reading -> !reading.failed())
                .forEach(reading ->
                        sums.computeIfAbsent(key(reading), none -> new Sum()).add(reading));
    }

    /** Empty until enough was read. */
    public Optional<Spread> of(Reading reading) {
        return Optional.ofNullable(sums.get(key(reading)))
                .filter(sum -> sum.n >= LEAST && sum.squares > 0)
                .map(sum ->
                        new Spread(sum.n, sum.mean, Math.sqrt(sum.squares / (sum.n - 1)), Math.pow(10, -sum.scale)));
    }
}
