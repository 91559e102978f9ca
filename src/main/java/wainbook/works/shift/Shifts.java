package wainbook.works.shift;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The shifts of a works in its zone. Where clocks change, a shift keeps its local times and is longer or shorter. */
public record Shifts(List<Shift> shifts, ZoneId zone) {

    /** A shift as it runs once. */
    public record Span(String title, Instant from, Instant to) {
        boolean holds(Instant time) {
            return !time.isBefore(from) && time.isBefore(to);
        }
    }

    public Shifts {
        shifts = List.copyOf(shifts);
    }

    /** When the shift that runs at this time ends; the later one where two overlap. Empty off shift. */
    public Optional<Instant> endOf(Instant time) {
        return running(time).map(Span::to);
    }

    /** The shift that runs at this time; the one that ends later where two overlap. Empty off shift. */
    public Optional<Span> running(Instant time) {
        return begunFrom(time, time).filter(span -> span.holds(time)).max(Comparator.comparing(Span::to));
    }

    /** When the next shift begins, within a week and a day. */
    public Optional<Instant> nextBegin(Instant time) {
        return begunFrom(time, time.plus(Duration.ofDays(8)))
                .map(Span::from)
                .filter(from -> from.isAfter(time))
                .min(Comparator.naturalOrder());
    }

    /** Whether work goes on at this time; a works that has set no shifts works round the clock. */
    public boolean working(Instant time) {
        return shifts.isEmpty() || running(time).isPresent();
    }

    /**
     * Whole minutes of the shifts between two instants; a minute of two shifts counts once. A works that has set no shifts
     * works round the clock.
     */
    public long workingMinutes(Instant from, Instant to) {
        if (shifts.isEmpty()) {
            return Math.max(0, Duration.between(from, to).toMinutes());
        }
        Duration worked = Duration.ZERO;
        Instant counted = from;
        for (Span span : (Iterable<Span>) begunFrom(from, to).sorted(Comparator.comparing(Span::from))::iterator) {
            Instant begin = later(span.from(), counted);
            Instant end = span.to().isBefore(to) ? span.to() : to;
            if (begin.isBefore(end)) {
                worked = worked.plus(Duration.between(begin, end));
                counted = end;
            }
        }
        return worked.toMinutes();
    }

    /** The shifts that can run between two instants: those begun on their days, and the night before. */
    private Stream<Span> begunFrom(Instant from, Instant to) {
        return LocalDate.ofInstant(from, zone)
                .minusDays(1)
                .datesUntil(LocalDate.ofInstant(later(from, to), zone).plusDays(1))
                .flatMap(begun -> shifts.stream()
                        .filter(shift -> shift.weekdays().contains(begun.getDayOfWeek()))
                        .map(shift -> span(shift, begun)));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private Span span(Shift shift, LocalDate begun) {
        return new Span(
                shift.title(),
                at(begun, shift.fromMinute()),
                at(shift.endsNextDay() ? begun.plusDays(1) : begun, shift.toMinute()));
    }

    private Instant at(LocalDate date, int minute) {
        return date.atTime(LocalTime.ofSecondOfDay(minute * 60L)).atZone(zone).toInstant();
    }
}
