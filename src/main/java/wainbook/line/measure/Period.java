package wainbook.line.measure;

import java.time.Instant;
import java.time.LocalDate;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/**
 * Days of the works, both included.
 *
 * @param end the end of the last day, or now where that is before it
 */
public record Period(LocalDate from, LocalDate to, Instant begin, Instant end) {

    /** Days on which somebody works that are looked back at where nobody asks for others. */
    public static final int WORKING_DAYS = 10;

    /** No longer one is worked out at once. */
    public static final int MOST_DAYS = 400;

    private static final int DAYS_BACK = 60;

    public static Period of(LocalDate from, LocalDate to, WorksDay day, Instant now) {
        Instant begin = day.endOf(from.minusDays(1));
        Instant end = day.endOf(to);
        Instant known = end.isBefore(now) ? end : now;
        return new Period(from, to, begin, known.isBefore(begin) ? begin : known);
    }

    /** The last days on which somebody works, up to this one. */
    public static LocalDate lastWorkingDays(LocalDate to, WorksDay day) {
        Shifts shifts = day.shifts();
        LocalDate first = to;
        int found = 0;
        for (LocalDate date = to; date.isAfter(to.minusDays(DAYS_BACK)); date = date.minusDays(1)) {
            if (shifts.workingMinutes(day.endOf(date.minusDays(1)), day.endOf(date)) > 0) {
                first = date;
                found++;
            }
            if (found == WORKING_DAYS) {
                break;
            }
        }
        return first;
    }

    boolean holds(Instant at) {
        return !at.isBefore(begin) && at.isBefore(end);
    }
}
