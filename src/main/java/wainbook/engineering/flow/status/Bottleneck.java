package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.Source;

/**
 * Which station holds the line up. By active periods: at each moment the one that has been and will be active longest without a break.
 * While its period and that of the next bottleneck overlap the bottleneck shifts; otherwise it is the sole one.
 *
 * @param soleMinutes by station
 * @param shiftingMinutes of no station alone
 * @param moments in the order of time
 */
public record Bottleneck(List<Double> soleMinutes, double shiftingMinutes, List<Moment> moments) {

    public static final List<Source> SOURCES = List.of(
            Source.seen("C. Roser, article on the active period method, 2014", "longest active period, opening part"),
            Source.memory("C. Roser, M. Nakano, M. Tanaka, 2001 to 2002", "sole and shifting bottleneck"),
            Source.memory("L. Li, Q. Chang, J. Ni, 2009", "turning point"));

    private static final double MILLIS_A_MINUTE = 60_000;

    /** A station was the bottleneck of these minutes. */
    public record Moment(int station, double fromMinute, double toMinute) {}

    /** Time in which a station did not wait. */
    public record Active(double fromMinute, double toMinute) {}

    private record Period(int station, double from, double to) {

        double overlap(Period other) {
            return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
        }
    }

    public Bottleneck {
        soleMinutes = List.copyOf(soleMinutes);
        moments = List.copyOf(moments);
    }

    /** The clock stands while no station works; one that is off shift while others work is not active. */
    public static Bottleneck of(Timeline timeline) {
        return ofPeriods(timeline.whileAnyWorks().stations().stream()
                .map(Bottleneck::active)
                .toList());
    }

    private static List<Active> active(List<Timeline.Stretch> stretches) {
        var periods = new ArrayList<Active>();
        for (Timeline.Stretch one : stretches) {
            int before = periods.size() - 1;
            double from = one.fromMillis() / MILLIS_A_MINUTE;
            double to = one.toMillis() / MILLIS_A_MINUTE;
            if (one.doing().active() && before >= 0 && periods.get(before).toMinute() == from) {
                periods.set(before, new Active(periods.get(before).fromMinute(), to));
            } else if (one.doing().active()) {
                periods.add(new Active(from, to));
            }
        }
        return periods;
    }

    /** @param active by station, each in the order of time */
    public static Bottleneck ofPeriods(List<List<Active>> active) {
        List<Period> reigns = new ArrayList<>();
        List<Moment> moments = new ArrayList<>();
        double[] changes = active.stream()
                .flatMap(List::stream)
                .flatMapToDouble(one -> DoubleStream.of(one.fromMinute(), one.toMinute()))
                .sorted()
                .distinct()
                .toArray();
        int[] at = new int[active.size()];
        for (int i = 0; i + 1 < changes.length; i++) {
            Period longest = longest(active, at, changes[i]);
            int before = reigns.size() - 1;
            if (longest != null && before >= 0 && reigns.get(before).equals(longest)) {
                moments.set(
                        before,
                        new Moment(longest.station(), moments.get(before).fromMinute(), changes[i + 1]));
            } else if (longest != null) {
                reigns.add(longest);
                moments.add(new Moment(longest.station(), changes[i], changes[i + 1]));
            }
        }
        return summed(active.size(), reigns, moments);
    }

    /**
     * By where waiting turns: every station before it rather blocked, every one behind rather starved, and itself waiting less than
     * both neighbours.
     *
     * @param blocked share of time by station
     * @param starved likewise
     * @return counted from 0; empty where the signs do not turn at one station
     */
    public static OptionalInt turningPoint(List<Double> blocked, List<Double> starved) {
        int last = blocked.size() - 1;
        return IntStream.rangeClosed(0, last)
                .filter(at -> IntStream.range(0, at).allMatch(one -> blocked.get(one) > starved.get(one)))
                .filter(at -> IntStream.rangeClosed(at + 1, last).allMatch(one -> starved.get(one) > blocked.get(one)))
                .filter(at -> at == 0 || waits(blocked, starved, at) < waits(blocked, starved, at - 1))
                .filter(at -> at == last || waits(blocked, starved, at) < waits(blocked, starved, at + 1))
                .findFirst();
    }

    private static double waits(List<Double> blocked, List<Double> starved, int at) {
        return blocked.get(at) + starved.get(at);
    }

    /** @param at how far each station is; moved on to what is not over */
    private static Period longest(List<List<Active>> active, int[] at, double minute) {
        Period longest = null;
        for (int station = 0; station < at.length; station++) {
            List<Active> own = active.get(station);
            while (at[station] < own.size() && own.get(at[station]).toMinute() <= minute) {
                at[station]++;
            }
            if (at[station] < own.size() && own.get(at[station]).fromMinute() <= minute) {
                var one = new Period(
                        station,
                        own.get(at[station]).fromMinute(),
                        own.get(at[station]).toMinute());
                if (longest == null || one.to() - one.from() > longest.to() - longest.from()) {
                    longest = one;
                }
            }
        }
        return longest;
    }

    private static Bottleneck summed(int stations, List<Period> reigns, List<Moment> moments) {
        double[] sole = new double[stations];
        double shifting = 0;
        for (int i = 0; i < reigns.size(); i++) {
            Moment moment = moments.get(i);
            var mine = new Period(moment.station(), moment.fromMinute(), moment.toMinute());
            double withNext = i + 1 < reigns.size() && reigns.get(i).overlap(reigns.get(i + 1)) > 0
                    ? mine.overlap(reigns.get(i + 1))
                    : 0;
            double withLast =
                    i > 0 && reigns.get(i - 1).overlap(reigns.get(i)) > 0 ? mine.overlap(reigns.get(i - 1)) : 0;
            double both = Math.min(mine.to() - mine.from(), withNext + withLast);
            shifting += both;
            sole[moment.station()] += mine.to() - mine.from() - both;
        }
        return new Bottleneck(Arrays.stream(sole).boxed().toList(), shifting, moments);
    }
}
