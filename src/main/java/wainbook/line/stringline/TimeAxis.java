package wainbook.line.stringline;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.works.shift.Shifts.Span;

/**
 * Working time from left to right; what is not worked has no width.
 *
 * @param worked in the order of time, at least one
 */
public record TimeAxis(List<Span> worked, double left, double right, ZoneId zone) {

    private static final double DAY_NAME = 74;
    private static final double HOUR_NAME = 40;
    private static final int[] HOURS = {1, 2, 3, 4, 6};

    public TimeAxis {
        worked = List.copyOf(worked);
        if (worked.isEmpty()) {
            throw new IllegalArgumentException("a time axis has working time");
        }
    }

    /** @param label empty where it would stand in the next one's way */
    public record Tick(double x, Optional<String> label, boolean day) {
        public String at() {
            return Pieces.figure(x);
        }
    }

    /** Before the first working minute it is the left end, after the last the right one; in a gap the seam. */
    double x(Instant at) {
        double minutes = 0;
        for (Span span : worked) {
            if (at.isBefore(span.from())) {
                break;
            }
            minutes += minutes(span.from(), at.isBefore(span.to()) ? at : span.to());
        }
        return left + minutes / all() * (right - left);
    }

    Instant from() {
        return worked.get(0).from();
    }

    Instant to() {
        return worked.get(worked.size() - 1).to();
    }

    boolean holds(Instant at) {
        return !at.isBefore(from()) && !at.isAfter(to());
    }

    /** Where a day's work begins, and full hours where there is room. */
    List<Tick> ticks() {
        var formats = new Formats(zone);
        var ticks = new ArrayList<Tick>();
        double named = Double.NEGATIVE_INFINITY;
        LocalDate before = LocalDate.MIN;
        for (Span span : worked) {
            LocalDate date = LocalDate.ofInstant(span.from(), zone);
            if (!date.equals(before)) {
                double x = x(span.from());
                boolean room = x - named >= DAY_NAME && x + DAY_NAME <= right + DAY_NAME / 2;
                ticks.add(new Tick(x, room ? Optional.of(formats.day(span.from())) : Optional.empty(), true));
                named = room ? x : named;
            }
            before = date;
        }
        ticks.addAll(hours(formats));
        return ticks;
    }

    private List<Tick> hours(Formats formats) {
        double hour = 60 / all() * (right - left);
        for (int step : HOURS) {
            if (step * hour >= HOUR_NAME) {
                return worked.stream()
                        .flatMap(span -> hours(span, step, formats).stream())
                        .toList();
            }
        }
        return List.of();
    }

    private List<Tick> hours(Span span, int step, Formats formats) {
        var ticks = new ArrayList<Tick>();
        LocalDate date = LocalDate.ofInstant(span.from(), zone);
        for (int hour = 0; hour < 48; hour += step) {
            Instant at =
                    date.plusDays(hour / 24).atTime(hour % 24, 0).atZone(zone).toInstant();
            if (at.isAfter(span.from()) && at.isBefore(span.to())) {
                ticks.add(new Tick(x(at), Optional.of(formats.clock(at)), false));
            }
        }
        return ticks;
    }

    private double all() {
        return worked.stream()
                .mapToDouble(span -> minutes(span.from(), span.to()))
                .sum();
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }
}
