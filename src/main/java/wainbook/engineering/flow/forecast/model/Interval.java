package wainbook.engineering.flow.forecast.model;

/** A time that holds its beginning and not its end, in minutes since the origin. */
public record Interval(double fromMinute, double toMinute) {

    public Interval {
        if (!(fromMinute < toMinute)) {
            throw new IllegalArgumentException("no time lies from " + fromMinute + " to " + toMinute);
        }
    }
}
