package wainbook.line.forecast.score;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.flow.score.Pit;
import wainbook.engineering.flow.score.Scores;
import wainbook.engineering.flow.score.Widening;
import wainbook.engineering.statistics.Share;
import wainbook.line.forecast.kept.Prediction;

/**
 * How forecasts of one horizon did, one a vehicle. Times are in working minutes. Only forecasts count of which nothing is open any
 * more; a vehicle that is not finished although its 97.5 % point has passed counts as one outside.
 *
 * @param days ahead
 * @param unfinished of those counted, not finished yet: they count as outside, and have no loss
 * @param open forecasts that do not count yet
 * @param onPlan forecasts that rest on planned minutes for want of a record, and said so: they are left out
 * @param within80 how many finished within the middle 80 %; so the others
 * @param loss mean pinball loss at 10, 50 and 90 %, empty where none has finished
 * @param brier mean squared error of the odds of the promised day, and what the share of kept days alone would have scored
 * @param late working minutes that they finished later than the median, on average
 */
public record Card(
        int days,
        int counted,
        int unfinished,
        int open,
        int onPlan,
        Optional<Share> within80,
        Optional<Share> within95,
        Optional<Loss> loss,
        Optional<Brier> brier,
        List<Integer> places,
        Optional<Pit> pit,
        OptionalDouble widen80,
        OptionalDouble widen95,
        OptionalDouble late) {

    /** Fewer do not widen what is shown. */
    public static final int ENOUGH = 20;

    public static final double CONFIDENCE = 0.95;
    private static final List<Double> JUDGED = List.of(0.1, 0.5, 0.9);
    private static final List<Double> TENTHS = List.of(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);

    /** In working minutes; less is better. */
    public record Loss(double forecast, double byStages, OptionalDouble byTakt) {

        public boolean beatsAll() {
            return forecast < byStages && (byTakt.isEmpty() || forecast < byTakt.getAsDouble());
        }
    }

    /** Less is better; from 0 to 1. */
    public record Brier(double odds, double shareAlone) {}

    /** Working minutes from the first to the second, negative if that is the earlier. */
    public interface Minutes {
        double between(Instant from, Instant to);
    }

    static Card of(int days, List<Outcome> said, Instant now, Minutes minutes) {
        List<Outcome> all = said.stream().filter(one -> !one.onPlan()).toList();
        List<Outcome> counted = all.stream().filter(one -> one.decided(now)).toList();
        List<Outcome> done =
                counted.stream().filter(one -> one.finished().isPresent()).toList();
        List<Integer> places = places(done);
        return new Card(
                days,
                counted.size(),
                counted.size() - done.size(),
                all.size() - counted.size(),
                said.size() - all.size(),
                within(counted, 0.1, 0.9),
                within(counted, 0.025, 0.975),
                done.isEmpty() ? Optional.empty() : Optional.of(loss(done, minutes)),
                counted.isEmpty() ? Optional.empty() : Optional.of(brier(counted)),
                places,
                done.size() < ENOUGH ? Optional.empty() : Optional.of(Pit.of(places)),
                widening(done, 0.8, 0.1, minutes),
                widening(done, 0.95, 0.025, minutes),
                done.stream()
                        .mapToDouble(one -> minutes.between(
                                one.said().quantile(0.5), one.finished().orElseThrow()))
                        .average());
    }

    /** The share that was said is not within the interval of the share that came, on enough vehicles. */
    public static boolean off(Share within, double said) {
        if (within.pieces() < ENOUGH) {
            return false;
        }
        Share.Interval interval = within.exact(CONFIDENCE);
        return said < interval.low() || said > interval.high();
    }

    private static Optional<Share> within(List<Outcome> counted, double low, double high) {
        int hits = (int) counted.stream().filter(one -> one.within(low, high)).count();
        return counted.isEmpty() ? Optional.empty() : Optional.of(new Share(hits, counted.size()));
    }

    private static Loss loss(List<Outcome> done, Minutes minutes) {
        boolean takt = done.stream().allMatch(one -> one.said().byTakt().isPresent());
        return new Loss(
                mean(done, one -> level -> one.said().quantile(level), minutes),
                mean(done, one -> level -> one.said().byStages(), minutes),
                takt
                        ? OptionalDouble.of(
                                mean(done, one -> level -> one.said().byTakt().orElseThrow(), minutes))
                        : OptionalDouble.empty());
    }

    private static double mean(List<Outcome> done, Function<Outcome, Function<Double, Instant>> said, Minutes minutes) {
        return done.stream()
                .flatMapToDouble(one -> JUDGED.stream()
                        .mapToDouble(level -> Scores.pinball(
                                level,
                                minutes.between(one.said().at(), said.apply(one).apply(level)),
                                minutes.between(one.said().at(), one.finished().orElseThrow()))))
                .average()
                .orElseThrow();
    }

    private static Brier brier(List<Outcome> counted) {
        List<Boolean> kept = counted.stream().map(Card::keptItsDay).toList();
        double share = kept.stream().filter(one -> one).count() / (double) kept.size();
        return new Brier(
                IntStream.range(0, kept.size())
                        .mapToDouble(i -> Scores.brier(counted.get(i).said().odds(), kept.get(i)))
                        .average()
                        .orElseThrow(),
                kept.stream()
                        .mapToDouble(one -> Scores.brier(share, one))
                        .average()
                        .orElseThrow());
    }

    private static boolean keptItsDay(Outcome one) {
        return one.finished().filter(at -> !at.isAfter(one.said().promisedBy())).isPresent();
    }

    private static List<Integer> places(List<Outcome> done) {
        int[] counts = new int[TENTHS.size() + 1];
        for (Outcome one : done) {
            Instant at = one.finished().orElseThrow();
            counts[
                    (int) TENTHS.stream()
                            .filter(level -> at.isAfter(one.said().quantile(level)))
                            .count()]++;
        }
        return IntStream.of(counts).boxed().toList();
    }

    private static OptionalDouble widening(List<Outcome> done, double held, double low, Minutes minutes) {
        double[] excess = done.stream()
                .mapToDouble(one -> {
                    Prediction said = one.said();
                    Instant at = one.finished().orElseThrow();
                    return DoubleStream.of(
                                    minutes.between(at, said.quantile(low)),
                                    minutes.between(said.quantile(1 - low), at))
                            .max()
                            .orElseThrow();
                })
                .toArray();
        return Widening.of(excess, held);
    }
}
