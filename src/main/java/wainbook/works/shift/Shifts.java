package wainbook.works.shift;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The shifts of a works in its zone. Where clocks change, a shift keeps its local times and is longer or shorter.
 *
 * @param breaks cut out of working time, each of every shift that contains it whole; a shift goes on through them
 * @param holidays days on which no shift begins
 */
public record Shifts(List<Shift> shifts, List<Break> breaks, Set<LocalDate> holidays, ZoneId zone) {

    private static final int DAYS_AT_A_TIME = 14;
    private static final int DAYS_SEARCHED = 3660;

    /** A shift as it runs once. */
    public record Span(String title, Instant from, Instant to) {
        boolean holds(Instant time) {
            return !time.isBefore(from) && time.isBefore(to);
        }
    }

    public Shifts {
        shifts = List.copyOf(shifts);
        breaks = List.copyOf(breaks);
        holidays = Set.copyOf(holidays);
    }

    /** Shifts without breaks or holidays. */
    public Shifts(List<Shift> shifts, ZoneId zone) {
        this(shifts, List.of(), Set.of(), zone);
    }

    private record Run(LocalDate begun, Span span) {}

    public Shifts at(String place) {
        return at(List.of(place));
    }

    /** The shifts that work at one of these places; those of the whole works where none does: somebody comes when it is needed. */
    public Shifts at(List<String> places) {
        List<Shift> here = shifts.stream()
                .filter(shift -> places.stream().anyMatch(shift::worksAt))
                .toList();
        return here.isEmpty() ? this : new Shifts(here, breaks, holidays, zone);
    }

    /** When the shift that runs at this time ends; the later one where two overlap. Empty off shift. */
    public Optional<Instant> endOf(Instant time) {
        return running(time).map(Span::to);
    }

    /** The shift that runs at this time; the one that ends later where two overlap. Empty off shift. */
    public Optional<Span> running(Instant time) {
        return begunFrom(time, time).filter(span -> span.holds(time)).max(Comparator.comparing(Span::to));
    }

    /** When the next shift begins, within a month: holidays may lie between. */
    public Optional<Instant> nextBegin(Instant time) {
        return begunFrom(time, time.plus(Duration.ofDays(31)))
                .map(Span::from)
                .filter(from -> from.isAfter(time))
                .min(Comparator.naturalOrder());
    }

    /** Whether a shift runs at this time, breaks included; a works that has set no shifts works round the clock. */
    public boolean working(Instant time) {
        return shifts.isEmpty() || running(time).isPresent();
    }

    /**
     * Whole working minutes between two instants: those of the shifts, less breaks; a minute of two shifts counts once. A works
     * that has set no shifts works round the clock.
     */
    public long workingMinutes(Instant from, Instant to) {
        return working(from, to).stream()
                .map(span -> Duration.between(span.from(), span.to()))
                .reduce(Duration.ZERO, Duration::plus)
                .toMinutes();
    }

    /** When so much working time has passed; for none, the instant itself. Empty where that is not within ten years. */
    public Optional<Instant> after(Instant from, Duration work) {
        Duration left = work;
        Instant reached = from;
        for (int days = 0; left.compareTo(Duration.ZERO) > 0; days += DAYS_AT_A_TIME) {
            if (days > DAYS_SEARCHED) {
                return Optional.empty();
            }
            Instant begin = from.plus(Duration.ofDays(days));
            for (Span span : working(begin, begin.plus(Duration.ofDays(DAYS_AT_A_TIME)))) {
                Duration here = Duration.between(span.from(), span.to());
                if (here.compareTo(left) >= 0) {
                    return Optional.of(span.from().plus(left));
                }
                left = left.minus(here);
                reached = span.to();
            }
        }
        return Optional.of(reached);
    }

    /** When is worked between two instants: half-open spans in the order of time that do not touch each other's insides. */
    public List<Span> working(Instant from, Instant to) {
        if (!from.isBefore(to)) {
            return List.of();
        }
        if (shifts.isEmpty()) {
            return List.of(new Span("", from, to));
        }
        var worked = new ArrayList<Span>();
        Instant counted = from;
        List<Span> pieces = runs(from, to)
                .flatMap(run -> withoutBreaks(run).stream())
                .sorted(Comparator.comparing(Span::from))
                .toList();
        for (Span piece : pieces) {
            Instant begin = later(piece.from(), counted);
            Instant end = piece.to().isBefore(to) ? piece.to() : to;
            if (begin.isBefore(end)) {
                worked.add(new Span(piece.title(), begin, end));
                counted = end;
            }
        }
        return List.copyOf(worked);
    }

    private List<Span> withoutBreaks(Run run) {
        var pieces = new ArrayList<Span>();
        Instant begin = run.span().from();
        List<Span> cuts = breaks.stream()
                .flatMap(
                        pause -> Stream.of(run.begun(), run.begun().plusDays(1)).map(day -> span(pause, day)))
                .filter(cut -> !cut.from().isBefore(run.span().from())
                        && !cut.to().isAfter(run.span().to()))
                .sorted(Comparator.comparing(Span::from))
                .toList();
        for (Span cut : cuts) {
            if (begin.isBefore(cut.from())) {
                pieces.add(new Span(run.span().title(), begin, cut.from()));
            }
            begin = later(begin, cut.to());
        }
        if (begin.isBefore(run.span().to())) {
            pieces.add(new Span(run.span().title(), begin, run.span().to()));
        }
        return pieces;
    }

    private Stream<Span> begunFrom(Instant from, Instant to) {
        return runs(from, to).map(Run::span);
    }

    /** The shifts that can run between two instants: those begun on their days, and the night before. */
    private Stream<Run> runs(Instant from, Instant to) {
        return LocalDate.ofInstant(from, zone)
                .minusDays(1)
                .datesUntil(LocalDate.ofInstant(later(from, to), zone).plusDays(1))
                .filter(begun -> !holidays.contains(begun))
                .flatMap(begun -> shifts.stream()
                        .filter(shift -> shift.weekdays().contains(begun.getDayOfWeek()))
                        .map(shift -> new Run(begun, span(shift, begun))));
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

    private Span span(Break pause, LocalDate day) {
        return new Span(
                "", at(day, pause.fromMinute()), at(pause.endsNextDay() ? day.plusDays(1) : day, pause.toMinute()));
    }

    private Instant at(LocalDate date, int minute) {
        return date.atTime(LocalTime.ofSecondOfDay(minute * 60L)).atZone(zone).toInstant();
    }
}
