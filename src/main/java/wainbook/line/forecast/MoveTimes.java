package wainbook.line.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.order.OrderSaying.Moved;
import wainbook.works.shift.Shifts;

/**
 * The times of the day at which vehicles are moved on, where the record shows such: moves of the last {@link #DAYS} days that follow
 * each other within {@link #APART_MIN} minutes of the day are one time, if it was kept on at least half of the days with any move.
 * They count where they hold {@link #MOST} of all moves in at most a third of the time between the first and the last of the day;
 * otherwise vehicles are moved at any time. These bounds are our choice, no published rule.
 *
 * @param times by their beginning; empty where vehicles are moved at any time
 */
public record MoveTimes(List<Window> times) {

    static final MoveTimes ANY = new MoveTimes(List.of());
    static final int DAYS = 28;
    static final int APART_MIN = 10;
    static final double MOST = 0.8;
    private static final int FEWEST_DAYS = 5;
    private static final double LONGEST = 1 / 3.0;

    /** Minutes of the local day, both ends included. */
    public record Window(int fromMinute, int toMinute) {
        int minutes() {
            return toMinute - fromMinute + 1;
        }

        boolean holds(int minute) {
            return fromMinute <= minute && minute <= toMinute;
        }
    }

    public MoveTimes {
        times = List.copyOf(times);
    }

    /** @param moves onto the line and along it */
    static MoveTimes of(Stream<Instant> moves, ZoneId zone, Instant now) {
        List<Instant> lately =
                moves.filter(at -> at.isAfter(now.minus(Duration.ofDays(DAYS)))).toList();
        long days = lately.stream()
                .map(at -> LocalDate.ofInstant(at, zone))
                .distinct()
                .count();
        if (days < FEWEST_DAYS) {
            return ANY;
        }
        TreeMap<Integer, List<Instant>> byMinute = lately.stream()
                .collect(Collectors.groupingBy(at -> minute(at, zone), TreeMap::new, Collectors.toList()));
        List<Window> kept = clusters(byMinute).stream()
                .filter(window -> byMinute.subMap(window.fromMinute(), true, window.toMinute(), true).values().stream()
                                        .flatMap(List::stream)
                                        .map(at -> LocalDate.ofInstant(at, zone))
                                        .distinct()
                                        .count()
                                * 2
                        >= days)
                .toList();
        long held = lately.stream()
                .filter(at -> kept.stream().anyMatch(window -> window.holds(minute(at, zone))))
                .count();
        int wide = kept.stream().mapToInt(Window::minutes).sum();
        int day = byMinute.lastKey() - byMinute.firstKey() + 1;
        return held >= MOST * lately.size() && wide <= LONGEST * day ? new MoveTimes(kept) : ANY;
    }

    private static List<Window> clusters(TreeMap<Integer, List<Instant>> byMinute) {
        var found = new ArrayList<Window>();
        for (int minute : byMinute.keySet()) {
            int last = found.size() - 1;
            if (last >= 0 && minute - found.get(last).toMinute() <= APART_MIN) {
                found.set(last, new Window(found.get(last).fromMinute(), minute));
            } else {
                found.add(new Window(minute, minute));
            }
        }
        return found;
    }

    private static int minute(Instant at, ZoneId zone) {
        return at.atZone(zone).toLocalTime().toSecondOfDay() / 60;
    }

    static boolean isMove(Moved moved) {
        return switch (moved.direction()) {
            case ONTO_LINE, FORWARD -> true;
            case OFF_LINE, BACK_ON, BACK, OUT -> false;
        };
    }

    public boolean none() {
        return times.isEmpty();
    }

    /** Those on days on which is worked then, in their order. */
    List<Shifts.Span> windows(Shifts shifts, Instant from, Instant to) {
        return LocalDate.ofInstant(from, shifts.zone())
                .datesUntil(LocalDate.ofInstant(to, shifts.zone()).plusDays(1))
                .flatMap(day -> times.stream().map(window -> on(day, window, shifts.zone())))
                .filter(span -> span.to().isAfter(from)
                        && shifts.working(span.from(), span.to()).size() > 0)
                .toList();
    }

    private static Shifts.Span on(LocalDate day, Window window, ZoneId zone) {
        Instant from = day.atStartOfDay(zone)
                .toLocalDateTime()
                .plusMinutes(window.fromMinute())
                .atZone(zone)
                .toInstant();
        return new Shifts.Span("", from, from.plus(Duration.ofMinutes(window.minutes())));
    }
}
