package wainbook.engineering.flow.forecast.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When work goes on: intervals in their order that do not overlap, in minutes since the origin. Beyond the last of them nothing is
 * ever worked, so that what is not finished by then finishes at positive infinity.
 *
 * <p>Looked up through buckets of equal width, so that a question costs the same wherever in the year it falls.
 */
public final class WorkingTime {

    private static final double LONG_AGO = -1e6;
    private static final double FAR_OFF = 1e9;
    private static final int BUCKETS_AN_INTERVAL = 8;
    /** Work that ends so little after its interval ends with it: sums of doubles are no truer. */
    private static final double HAIR = 1e-6;

    private static final WorkingTime ALWAYS = of(List.of(new Interval(LONG_AGO, FAR_OFF)));

    private final List<Interval> intervals;
    private final double[] from;
    private final double[] to;
    /** Minutes worked before each interval, and all of them at the end. */
    private final double[] before;

    private final Buckets byMinute;
    private final Buckets byWorked;

    private WorkingTime(List<Interval> intervals) {
        this.intervals = List.copyOf(intervals);
        int n = intervals.size();
        this.from = intervals.stream().mapToDouble(Interval::fromMinute).toArray();
        this.to = intervals.stream().mapToDouble(Interval::toMinute).toArray();
        this.before = new double[n + 1];
        for (int i = 0; i < n; i++) {
            if (i > 0 && from[i] < to[i - 1]) {
                throw new IllegalArgumentException(intervals.get(i) + " begins before the one ahead of it ends");
            }
            before[i + 1] = before[i] + (to[i] - from[i]);
        }
        double[] worked = new double[n];
        System.arraycopy(before, 1, worked, 0, n);
        this.byMinute = new Buckets(to, n == 0 ? 0 : from[0], BUCKETS_AN_INTERVAL * n);
        this.byWorked = new Buckets(worked, 0, BUCKETS_AN_INTERVAL * n);
    }

    /** @param intervals in their order, without overlap; they may touch */
    public static WorkingTime of(List<Interval> intervals) {
        return new WorkingTime(intervals);
    }

    /** Round the clock. */
    public static WorkingTime always() {
        return ALWAYS;
    }

    public List<Interval> intervals() {
        return intervals;
    }

    /**
     * The same with these times cut out: what was begun goes on after them.
     *
     * @param cuts in any order, overlapping or not
     */
    public WorkingTime without(List<Interval> cuts) {
        List<Interval> left = intervals;
        for (Interval cut : cuts) {
            var kept = new ArrayList<Interval>();
            for (Interval one : left) {
                if (one.fromMinute() < Math.min(one.toMinute(), cut.fromMinute())) {
                    kept.add(new Interval(one.fromMinute(), Math.min(one.toMinute(), cut.fromMinute())));
                }
                if (Math.max(one.fromMinute(), cut.toMinute()) < one.toMinute()) {
                    kept.add(new Interval(Math.max(one.fromMinute(), cut.toMinute()), one.toMinute()));
                }
            }
            left = kept;
        }
        return of(left);
    }

    /** Whenever work goes on in this one or in the other. */
    public WorkingTime and(WorkingTime other) {
        var all = new ArrayList<>(intervals);
        all.addAll(other.intervals);
        all.sort(Comparator.comparingDouble(Interval::fromMinute));
        var joined = new ArrayList<Interval>();
        for (Interval one : all) {
            int before = joined.size() - 1;
            if (before >= 0 && one.fromMinute() <= joined.get(before).toMinute()) {
                joined.set(
                        before,
                        new Interval(
                                joined.get(before).fromMinute(),
                                Math.max(one.toMinute(), joined.get(before).toMinute())));
            } else {
                joined.add(one);
            }
        }
        return of(joined);
    }

    /** The same in other coordinates: its times as minutes worked in a time that holds all of it. */
    public WorkingTime within(WorkingTime whole) {
        return of(intervals.stream()
                        .map(one -> new Interval(whole.worked(one.fromMinute()), whole.worked(one.toMinute())))
                        .toList())
                .and(of(List.of()));
    }

    /** The first minute at which work goes on, not before this one; positive infinity if there is none. */
    public double next(double minute) {
        int i = byMinute.after(minute);
        return i == from.length ? Double.POSITIVE_INFINITY : Math.max(minute, from[i]);
    }

    /** Minutes worked from the first interval's beginning to this minute. */
    public double worked(double minute) {
        int i = byMinute.after(minute);
        return i == from.length ? before[i] : before[i] + Math.max(0, minute - from[i]);
    }

    /** The first minute by which so many minutes have been worked since the first interval's beginning. */
    public double reached(double worked) {
        int k = byWorked.reaching(worked);
        return k == from.length ? Double.POSITIVE_INFINITY : from[k] + (worked - before[k]);
    }

    /** The last minute at which no more than that have been worked: the same, but at the end of an interval the next one's beginning. */
    public double resumed(double worked) {
        int k = byWorked.after(worked);
        return k == from.length ? reached(worked) : from[k] + (worked - before[k]);
    }

    /**
     * The first minute by which so many minutes have been worked since this one; the minute itself for none.
     *
     * @param minutes at least 0
     */
    public double add(double minute, double minutes) {
        if (minutes <= 0) {
            return minute;
        }
        if (to.length == 1) {
            double ends = Math.max(minute, from[0]) + minutes;
            return ends <= to[0] + HAIR ? ends : Double.POSITIVE_INFINITY;
        }
        int i = byMinute.after(minute);
        if (i == from.length) {
            return Double.POSITIVE_INFINITY;
        }
        double begun = Math.max(minute, from[i]);
        if (begun + minutes <= to[i] + HAIR) {
            return begun + minutes;
        }
        return reached(before[i] + (begun - from[i]) + minutes);
    }

    /** The first minute, not before this one, at which something of this length fits into one interval. */
    public double fitting(double minute, double length) {
        for (int i = byMinute.after(minute); i < from.length; i++) {
            double begun = Math.max(minute, from[i]);
            if (begun + length <= to[i]) {
                return begun;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WorkingTime that && intervals.equals(that.intervals);
    }

    @Override
    public int hashCode() {
        return intervals.hashCode();
    }

    @Override
    public String toString() {
        return "WorkingTime" + intervals;
    }
}
