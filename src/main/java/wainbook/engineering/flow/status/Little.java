package wainbook.engineering.flow.status;

import java.math.BigInteger;
import java.util.List;
import java.util.TreeMap;
import wainbook.engineering.Source;
import wainbook.engineering.flow.status.StationPast.Span;

/**
 * Little's law over a window of time: L = λ · W, with L the mean number there, λ how many came an hour, W how long one stayed on average.
 * It is a law of the long run; over a window that begins and ends with nobody there it is exact.
 *
 * @param numberMillis ∫ of the number there over the window
 * @param vehicles that left in the window
 * @param stayMillis of those that left, all their time there together
 * @param atBegin there already when the window began
 * @param atEnd there still when it ended
 */
public record Little(long windowMillis, long numberMillis, int vehicles, long stayMillis, int atBegin, int atEnd) {

    public static final Source SOURCE = Source.memory("J. D. C. Little, 1961", "L = λW");

    private static final double MILLIS_AN_HOUR = 3_600_000;

    /** @param stays from entering to leaving, in any order; the end of one that is there still lies behind the window */
    public static Little of(List<Span> stays, long fromMillis, long toMillis) {
        var changes = new TreeMap<Long, Integer>();
        int atBegin = 0;
        int atEnd = 0;
        int left = 0;
        long stayed = 0;
        for (Span stay : stays) {
            if (stay.fromMillis() < toMillis && stay.toMillis() > fromMillis) {
                changes.merge(Math.max(fromMillis, stay.fromMillis()), 1, Integer::sum);
                changes.merge(Math.min(toMillis, stay.toMillis()), -1, Integer::sum);
                atBegin += stay.fromMillis() < fromMillis ? 1 : 0;
                atEnd += stay.toMillis() > toMillis ? 1 : 0;
                left += stay.toMillis() <= toMillis ? 1 : 0;
                stayed += stay.toMillis() <= toMillis ? stay.toMillis() - stay.fromMillis() : 0;
            }
        }
        return new Little(toMillis - fromMillis, integral(changes), left, stayed, atBegin, atEnd);
    }

    /** By the number there from change to change, and not by how long each stayed: the two sides of the law are found apart. */
    private static long integral(TreeMap<Long, Integer> changes) {
        long sum = 0;
        long since = 0;
        long there = 0;
        for (var change : changes.entrySet()) {
            sum += there * (change.getKey() - since);
            since = change.getKey();
            there += change.getValue();
        }
        return sum;
    }

    public boolean emptyAtBothEnds() {
        return atBegin == 0 && atEnd == 0;
    }

    /** L = λ · W as fractions of whole numbers: ∫/T = (n/T) · (Σ/n), multiplied out. */
    public boolean exact() {
        BigInteger window = BigInteger.valueOf(windowMillis);
        BigInteger left = BigInteger.valueOf(numberMillis).multiply(window).multiply(BigInteger.valueOf(vehicles));
        BigInteger right = BigInteger.valueOf(vehicles)
                .multiply(BigInteger.valueOf(stayMillis))
                .multiply(window);
        return vehicles > 0 && windowMillis > 0 && left.equals(right);
    }

    /** L. */
    public double meanNumber() {
        return numberMillis / (double) windowMillis;
    }

    /** λ. */
    public double anHour() {
        return vehicles / (windowMillis / MILLIS_AN_HOUR);
    }

    /** W. */
    public double meanHours() {
        return stayMillis / MILLIS_AN_HOUR / vehicles;
    }
}
