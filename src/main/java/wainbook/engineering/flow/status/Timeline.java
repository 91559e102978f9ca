package wainbook.engineering.flow.status;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What each station of a line was doing over a period, in working minutes.
 *
 * @param stations in the order of the line; the stretches of each in their order, one beginning where the one before ends, all from
 *     the same minute to the same
 */
public record Timeline(List<List<Stretch>> stations) {

    /** Holds its beginning and not its end. */
    public record Stretch(double fromMinute, double toMinute, Doing doing) {}

    public Timeline {
        stations = stations.stream().map(List::copyOf).toList();
        for (List<Stretch> stretches : stations) {
            for (int i = 1; i < stretches.size(); i++) {
                if (stretches.get(i).fromMinute() != stretches.get(i - 1).toMinute()) {
                    throw new IllegalArgumentException("a station does nothing before " + stretches.get(i));
                }
            }
        }
    }

    /** What every station is doing at this minute. */
    public List<Doing> at(double minute) {
        return stations.stream()
                .map(stretches -> stretches.stream()
                        .filter(one -> one.fromMinute() <= minute && minute < one.toMinute())
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("nothing is known of minute " + minute))
                        .doing())
                .toList();
    }

    /** Every minute at which a station begins with something else, and the end of all. */
    double[] changes() {
        return stations.stream()
                .flatMap(List::stream)
                .flatMapToDouble(one -> DoubleStream.of(one.fromMinute(), one.toMinute()))
                .sorted()
                .distinct()
                .toArray();
    }
}
