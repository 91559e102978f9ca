package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What each station of a line was doing over a period, in milliseconds of the clock since a moment: whole ones, so that the states of a
 * station add up to the period exactly.
 *
 * @param stations the stretches of each in their order, one beginning where the one before ends, all from the same moment to the same
 * @param before for each station those that vehicles come to it from
 */
public record Timeline(List<List<Stretch>> stations, List<List<Integer>> before) {

    private static final double MILLIS_A_MINUTE = 60_000;

    /**
     * Holds its beginning and not its end.
     *
     * @param vehicle whether one stood there
     * @param next the stations that this vehicle could go to next; none at the end of its way
     */
    public record Stretch(long fromMillis, long toMillis, Doing doing, boolean vehicle, List<Integer> next) {

        public Stretch {
            next = List.copyOf(next);
        }

        public static Stretch ofMinutes(double from, double to, Doing doing) {
            return new Stretch(
                    Math.round(from * MILLIS_A_MINUTE),
                    Math.round(to * MILLIS_A_MINUTE),
                    doing,
                    doing != Doing.STARVED,
                    List.of());
        }

        public double minutes() {
            return (toMillis - fromMillis) / MILLIS_A_MINUTE;
        }

        boolean sameAs(Stretch other) {
            return doing == other.doing && vehicle == other.vehicle && next.equals(other.next);
        }
    }

    /** What holds between two changes. */
    interface Between {
        void take(long fromMillis, long toMillis, List<Stretch> line);
    }

    public Timeline {
        stations = stations.stream().map(List::copyOf).toList();
        before = before.stream().map(List::copyOf).toList();
        for (List<Stretch> stretches : stations) {
            for (int i = 1; i < stretches.size(); i++) {
                if (stretches.get(i).fromMillis() != stretches.get(i - 1).toMillis()) {
                    throw new IllegalArgumentException("a station does nothing before " + stretches.get(i));
                }
            }
            if (!stretches.isEmpty() && !span(stretches).equals(span(stations.get(0)))) {
                throw new IllegalArgumentException("stations are told of different periods");
            }
        }
    }

    private static List<Long> span(List<Stretch> stretches) {
        return List.of(
                stretches.get(0).fromMillis(),
                stretches.get(stretches.size() - 1).toMillis());
    }

    /** Stations one after another, each vehicle going from one to the next. */
    public static Timeline row(List<List<Stretch>> stations) {
        int last = stations.size() - 1;
        return new Timeline(
                IntStream.rangeClosed(0, last)
                        .mapToObj(at -> stations.get(at).stream()
                                .map(one -> new Stretch(
                                        one.fromMillis(),
                                        one.toMillis(),
                                        one.doing(),
                                        one.vehicle(),
                                        at < last ? List.of(at + 1) : List.of()))
                                .toList())
                        .toList(),
                IntStream.rangeClosed(0, last)
                        .mapToObj(at -> at > 0 ? List.of(at - 1) : List.<Integer>of())
                        .toList());
    }

    /** What every station is doing at this minute. */
    public List<Doing> at(double minute) {
        double millis = minute * MILLIS_A_MINUTE;
        return stations.stream()
                .map(stretches -> stretches.stream()
                        .filter(one -> one.fromMillis() <= millis && millis < one.toMillis())
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("nothing is known of minute " + minute))
                        .doing())
                .toList();
    }

    /** How long a station was doing something, in milliseconds. */
    public long millis(int station, Doing doing) {
        return stations.get(station).stream()
                .filter(one -> one.doing() == doing)
                .mapToLong(one -> one.toMillis() - one.fromMillis())
                .sum();
    }

    /** The minute at which all of it ends; 0 where there is nothing. */
    public double endMinute() {
        return stations.isEmpty() || stations.get(0).isEmpty()
                ? 0
                : span(stations.get(0)).get(1) / MILLIS_A_MINUTE;
    }

    /** Goes through the period from change to change. */
    void sweep(Between each) {
        if (stations.isEmpty() || stations.get(0).isEmpty()) {
            return;
        }
        int[] at = new int[stations.size()];
        long end = span(stations.get(0)).get(1);
        long now = stations.get(0).get(0).fromMillis();
        while (now < end) {
            List<Stretch> line = IntStream.range(0, at.length)
                    .mapToObj(station -> stations.get(station).get(at[station]))
                    .toList();
            long next = line.stream().mapToLong(Stretch::toMillis).min().orElse(end);
            each.take(now, next, line);
            for (int station = 0; station < at.length; station++) {
                at[station] += line.get(station).toMillis() == next ? 1 : 0;
            }
            now = next;
        }
    }

    /** The same without the time in which no station works: nobody's clock runs meanwhile. */
    public Timeline whileAnyWorks() {
        List<List<Stretch>> kept = new ArrayList<>();
        stations.forEach(station -> kept.add(new ArrayList<>()));
        long[] cut = {0};
        sweep((from, to, line) -> {
            if (line.stream().allMatch(one -> one.doing() == Doing.OFF_SHIFT)) {
                cut[0] += to - from;
                return;
            }
            for (int station = 0; station < line.size(); station++) {
                Stretch one = line.get(station);
                add(kept.get(station), new Stretch(from - cut[0], to - cut[0], one.doing(), one.vehicle(), one.next()));
            }
        });
        return new Timeline(kept, before);
    }

    /** Lengthens the last stretch where nothing changes. */
    static void add(List<Stretch> stretches, Stretch next) {
        int last = stretches.size() - 1;
        if (last >= 0 && stretches.get(last).sameAs(next)) {
            Stretch former = stretches.get(last);
            stretches.set(
                    last, new Stretch(former.fromMillis(), next.toMillis(), next.doing(), next.vehicle(), next.next()));
        } else {
            stretches.add(next);
        }
    }

    /** Of all states of a station together: the length of the period, in milliseconds. */
    public long millis(int station) {
        return Arrays.stream(Doing.values())
                .mapToLong(doing -> millis(station, doing))
                .sum();
    }
}
