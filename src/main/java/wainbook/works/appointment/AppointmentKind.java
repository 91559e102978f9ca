package wainbook.works.appointment;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;

/**
 * Something that every vehicle has to pass after the line, at a time that is agreed: brake test, weighing, road test.
 *
 * @param fromMinute of the day, 0 to 1439, by the works' local time
 * @param toMinute of the day, after {@code fromMinute}: it is over by then
 * @param weekdays on which there is one
 * @param lengthMinutes in clock time
 * @param noticeDays clock days from asking to the earliest date
 * @param rebookingDays clock days from a failure to the earliest next date
 * @param failsInHundred as the works expects until its own record says
 */
public record AppointmentKind(
        String code,
        String title,
        int fromMinute,
        int toMinute,
        List<DayOfWeek> weekdays,
        int lengthMinutes,
        int noticeDays,
        int rebookingDays,
        int failsInHundred) {

    private static final int DAY_MINUTES = 24 * 60;
    private static final int MOST_DAYS = 365;

    public AppointmentKind {
        weekdays = List.copyOf(weekdays);
        if (code.isBlank() || title.isBlank() || weekdays.isEmpty()) {
            throw new IllegalArgumentException("an appointment has a code, a title and a weekday");
        }
        if (fromMinute < 0 || toMinute > DAY_MINUTES || lengthMinutes < 1 || fromMinute + lengthMinutes > toMinute) {
            throw new IllegalArgumentException(
                    "an appointment of " + lengthMinutes + " minutes fits between its hours, of one day");
        }
        if (noticeDays < 0 || noticeDays > MOST_DAYS || rebookingDays < 0 || rebookingDays > MOST_DAYS) {
            throw new IllegalArgumentException("notice and rebooking take 0 to 365 days");
        }
        if (failsInHundred < 0 || failsInHundred > 99) {
            throw new IllegalArgumentException("0 to 99 in a hundred fail, not " + failsInHundred);
        }
    }

    /** Whether it can take place at this time. */
    public boolean open(Instant at, ZoneId zone) {
        var local = at.atZone(zone);
        LocalTime time = local.toLocalTime();
        int minute = time.getHour() * 60 + time.getMinute();
        return weekdays.contains(local.getDayOfWeek()) && minute >= fromMinute && minute + lengthMinutes <= toMinute;
    }
}
