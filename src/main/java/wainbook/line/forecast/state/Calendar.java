package wainbook.line.forecast.state;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Pulses;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.works.shift.Shifts;

/** The works' shifts as minutes since a moment. A works that has set no shifts works round the clock. */
public record Calendar(Shifts shifts, Instant now) {

    /** What is not finished by then has no date. */
    public static final int DAYS_AHEAD = 180;

    private static final int DAYS_BACK = 14;
    private static final double SECONDS = 60;
    private static final long QUARTER_S = 15 * 60L;

    /** Of the whole works. */
    WorkingTime working() {
        return working(shifts);
    }

    /** Of the shifts that work at one of these stations. */
    WorkingTime working(List<String> stations) {
        return working(shifts.at(stations));
    }

    private WorkingTime working(Shifts some) {
        return WorkingTime.of(some.working(now, end()).stream()
                .map(span -> new Interval(minute(span.from()), minute(span.to())))
                .toList());
    }

    /** Minutes at which the line moves; none where the record shows no times for it. */
    Pulses pulses(MoveTimes moves) {
        return Pulses.at(moves.on(shifts, now, end()).mapToDouble(this::minute).toArray(), MoveTimes.APART_MIN);
    }

    /** How many such minutes there have been since a vehicle came. */
    int stood(MoveTimes moves, Instant came) {
        return (int) moves.on(shifts, came.plus(Duration.ofMinutes(MoveTimes.APART_MIN)), now)
                .count();
    }

    public Instant end() {
        return now.plus(Duration.ofDays(DAYS_AHEAD));
    }

    /** The day it is at the works. */
    public LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, shifts.zone());
    }

    /** So many working minutes after a minute. */
    public double workedOn(double minute, double worked) {
        return working().add(minute, worked);
    }

    /** So many working minutes before a minute, and not before now. */
    public double workedBack(double minute, double worked) {
        WorkingTime time = working();
        return time.reached(Math.max(0, time.worked(minute) - worked));
    }

    /** Whether anything is worked on a day from now on. */
    public boolean worked(LocalDate day) {
        Instant begin = day.atStartOfDay(shifts.zone()).toInstant();
        Instant from = begin.isAfter(now) ? begin : now;
        return !shifts.working(from, day.plusDays(1).atStartOfDay(shifts.zone()).toInstant())
                .isEmpty();
    }

    /**
     * When work begins at one of these stations on a day; on the next working day once it has begun on that one, or on a later one.
     */
    public double workFrom(LocalDate day, List<String> stations) {
        LocalDate today = day(now);
        Shifts there = shifts.at(stations);
        boolean begun = !day.isAfter(today)
                && !there.working(today.atStartOfDay(shifts.zone()).toInstant(), now)
                        .isEmpty();
        return working(there).next(beginOf(begun ? today.plusDays(1) : day));
    }

    /** The minute at which a day begins. */
    public double beginOf(LocalDate day) {
        return minute(day.atStartOfDay(shifts.zone()).toInstant());
    }

    /** To the second; what lies beyond the calendar at its end. */
    public Instant at(double minute) {
        return Double.isFinite(minute) ? now.plusSeconds(Math.round(minute * SECONDS)) : end();
    }

    public double minute(Instant at) {
        return Duration.between(now, at).toMillis() / (1000 * SECONDS);
    }

    /** When so much has been worked at one of these stations from now on; the end of the calendar for what lies beyond it. */
    public Instant worked(double minutes, List<String> stations) {
        return at(working(stations).add(0, minutes));
    }

    /** When the last working minute of that day is over, or of the last day before it on which there was one. */
    public double endOf(LocalDate day) {
        Instant midnight = day.plusDays(1).atStartOfDay(shifts.zone()).toInstant();
        List<Shifts.Span> spans = shifts.working(midnight.minus(Duration.ofDays(DAYS_BACK)), midnight);
        return minute(spans.isEmpty() ? midnight : spans.get(spans.size() - 1).to());
    }

    /** To the quarter of an hour before; empty beyond the calendar. */
    public Optional<Instant> notBefore(double minute) {
        return rounded(minute, Math.floor(seconds(minute) / QUARTER_S));
    }

    /** To the quarter of an hour after; empty beyond the calendar. */
    public Optional<Instant> notAfter(double minute) {
        return rounded(minute, Math.ceil(seconds(minute) / QUARTER_S));
    }

    private double seconds(double minute) {
        return now.toEpochMilli() / 1000.0 + minute * SECONDS;
    }

    private static Optional<Instant> rounded(double minute, double quarters) {
        return Double.isFinite(minute)
                ? Optional.of(Instant.ofEpochSecond(((long) quarters) * QUARTER_S))
                : Optional.empty();
    }
}
