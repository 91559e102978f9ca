package wainbook.engineering.flow.sequence;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.Lateness;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.score.PairedDifference;

/**
 * An order against today's, pair by pair on draws that neither was sought with.
 *
 * @param lateBefore mean late working minutes of all that are promised, and {@code lateAfter}
 * @param saved of them, with the 95 % interval
 * @param keptBefore days kept on average, of as many as there are {@code vehicles}
 * @param moreKept of them, with the 95 % interval
 * @param vehicles all of the line that are promised, in its order
 */
public record Comparison(
        long seed,
        int draws,
        double lateBefore,
        double lateAfter,
        PairedDifference saved,
        double keptBefore,
        PairedDifference moreKept,
        List<Change> vehicles) {

    private static final double CONFIDENCE = 0.95;
    /** A gain of less, over all vehicles together, is nothing to move one for; our choice. */
    public static final double LEAST_MINUTES = 5;

    public Comparison {
        vehicles = List.copyOf(vehicles);
    }

    /**
     * One vehicle.
     *
     * @param likelier by how much it is likelier to keep its day, with the 95 % interval
     * @param laterMinutes working minutes of the last stage by which it finishes later, negative if earlier; empty where a draw lies beyond
     *     the calendar
     */
    public record Change(
            String vehicle,
            double oddsBefore,
            double oddsAfter,
            PairedDifference likelier,
            double medianBefore,
            double medianAfter,
            OptionalDouble laterMinutes) {

        public boolean gains() {
            return likelier.low() > 0;
        }

        public boolean loses() {
            return likelier.high() < 0;
        }
    }

    static Comparison of(InFront front, List<Integer> order, Budget budget) {
        Line before = front.line();
        Forecast was = Forecast.of(before, budget.comparison());
        boolean same = order.equals(front.today());
        Line after = same ? before : front.in(order);
        Forecast is = same ? was : Forecast.of(after, budget.comparison());
        Lateness lateWas = Lateness.of(before, was);
        Lateness lateIs = Lateness.of(after, is);
        List<Vehicle> promised = before.vehicles().stream()
                .filter(one -> one.promised().isPresent())
                .toList();
        int draws = budget.comparison().most();
        double[] keptBefore = new double[draws];
        double[] keptAfter = new double[draws];
        WorkingTime time = Lateness.counted(before);
        List<Change> changes = promised.stream()
                .map(one -> change(
                        one, was.of(one.name()).finish(), is.of(one.name()).finish(), time, keptBefore, keptAfter))
                .toList();
        return new Comparison(
                budget.comparison().seed(),
                draws,
                lateWas.meanMinutes(),
                lateIs.meanMinutes(),
                lateWas.vanishing(lateIs),
                DoubleStream.of(keptBefore).average().orElse(0),
                PairedDifference.of(keptBefore, keptAfter, CONFIDENCE),
                changes);
    }

    private static Change change(
            Vehicle vehicle, Finish before, Finish after, WorkingTime time, double[] allBefore, double[] allAfter) {
        double promised = vehicle.promised().orElseThrow();
        double[] keptBefore = kept(before, promised, allBefore);
        double[] keptAfter = kept(after, promised, allAfter);
        boolean known = Double.isFinite(before.quantile(1)) && Double.isFinite(after.quantile(1));
        return new Change(
                vehicle.name(),
                before.by(promised).share(),
                after.by(promised).share(),
                PairedDifference.of(keptBefore, keptAfter, CONFIDENCE),
                before.median(),
                after.median(),
                known ? OptionalDouble.of(after.laterThan(before, time).mean()) : OptionalDouble.empty());
    }

    private static double[] kept(Finish finish, double promised, double[] all) {
        double[] minutes = finish.inOrder();
        double[] kept = IntStream.range(0, all.length)
                .mapToDouble(at -> minutes[minutes.length == 1 ? 0 : at] <= promised ? 1 : 0)
                .toArray();
        IntStream.range(0, all.length).forEach(at -> all[at] += kept[at]);
        return kept;
    }

    /** The gain can be told from nothing. */
    boolean shown() {
        return saved.low() > 0;
    }

    boolean enough() {
        return saved.mean() >= LEAST_MINUTES;
    }
}
