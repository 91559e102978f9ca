package wainbook.works;

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

    private record Span(Instant from, Instant to) {
        boolean holds(Instant time) {
            return !time.isBefore(from) && time.isBefore(to);
        }
    }

    public Shifts {
        shifts = List.copyOf(shifts);
    }

    /** When the shift that runs at this time ends; the later one where two overlap. Empty off shift. */
    public Optional<Instant> endOf(Instant time) {
        LocalDate today = LocalDate.ofInstant(time, zone);
        return Stream.of(today.minusDays(1), today)
                .flatMap(begun -> shifts.stream()
                        .filter(shift -> shift.weekdays().contains(begun.getDayOfWeek()))
                        .map(shift -> span(shift, begun)))
                .filter(span -> span.holds(time))
                .map(Span::to)
                .max(Comparator.naturalOrder());
    }

    private Span span(Shift shift, LocalDate begun) {
        return new Span(
                at(begun, shift.fromMinute()), at(shift.endsNextDay() ? begun.plusDays(1) : begun, shift.toMinute()));
    }

    private Instant at(LocalDate date, int minute) {
        return date.atTime(LocalTime.ofSecondOfDay(minute * 60L)).atZone(zone).toInstant();
    }
}
