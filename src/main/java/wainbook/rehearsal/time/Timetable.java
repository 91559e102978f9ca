package wainbook.rehearsal.time;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import wainbook.works.shift.Shift;

/**
 * When the line moves: every vehicle one station on at the beginning of a slot. A slot is a takt and the time that the
 * move takes, and lies within the first shift of a day, so that no isolation is left over night.
 *
 * @param current the slot that runs now, or ran last
 */
public record Timetable(List<Instant> starts, int current) {

    public static final Duration TAKT = Duration.ofMinutes(94);
    private static final Duration MOVING = Duration.ofMinutes(4);
    private static final int DAYS_BACK = 70;
    private static final int DAYS_AHEAD = 10;

    public Timetable {
        starts = List.copyOf(starts);
    }

    public static Timetable of(List<Shift> shifts, ZoneId zone, Instant now) {
        var starts = new ArrayList<Instant>();
        LocalDate today = LocalDate.ofInstant(now, zone);
        today.minusDays(DAYS_BACK)
                .datesUntil(today.plusDays(DAYS_AHEAD))
                .forEach(day -> shifts.stream()
                        .filter(shift -> shift.weekdays().contains(day.getDayOfWeek()))
                        .limit(1)
                        .forEach(shift -> starts.addAll(slots(shift, day, zone))));
        starts.sort(null);
        int current = 0;
        for (int i = 0; i < starts.size(); i++) {
            current = starts.get(i).isAfter(now) ? current : i;
        }
        return new Timetable(starts, current);
    }

    private static List<Instant> slots(Shift shift, LocalDate day, ZoneId zone) {
        Instant from = at(day, shift.fromMinute(), zone);
        boolean overnight = shift.toMinute() <= shift.fromMinute();
        Instant to = at(overnight ? day.plusDays(1) : day, shift.toMinute(), zone);
        var slots = new ArrayList<Instant>();
        for (Instant start = from.plus(MOVING);
                !start.plus(TAKT).isAfter(to);
                start = start.plus(TAKT).plus(MOVING)) {
            slots.add(start);
        }
        return slots;
    }

    private static Instant at(LocalDate day, int minute, ZoneId zone) {
        return day.atTime(LocalTime.ofSecondOfDay(minute * 60L)).atZone(zone).toInstant();
    }

    /**
     * The moment at which a demonstration begins: in the middle of a morning, so many minutes after the beginning of the
     * third slot of the latest working day that is not still to come.
     */
    public static Instant morning(List<Shift> shifts, ZoneId zone, Instant now, int minutes) {
        Timetable all = of(shifts, zone, now);
        for (int slot = all.current(); slot > 1; slot--) {
            Instant moment = all.starts().get(slot).plus(Duration.ofMinutes(minutes));
            boolean third = all.startsShift(slot - 2);
            if (third && !moment.isAfter(now)) {
                return moment;
            }
        }
        return now;
    }

    private boolean startsShift(int slot) {
        return slot == 0
                || Duration.between(starts.get(slot - 1), starts.get(slot)).compareTo(TAKT.plus(MOVING)) > 0;
    }

    /** @param slot counted from the current one, which is 0 */
    public Instant start(int slot) {
        return starts.get(current + slot);
    }
}
