package wainbook.engineering.flow.forecast.model;

/**
 * Something dated after the line: brake test, weighing, road test, annual test.
 *
 * @param openings when it can take place; it has to fit into one interval, so a slot is an interval of its length
 * @param lengthMinutes in clock time
 * @param noticeMinutes from the vehicle's being ready to the earliest date, unless it is booked already
 * @param failure chance that it has to be repeated, each time, from 0 up to but not 1
 * @param rebookingMinutes from a failure to the earliest next date
 */
public record Appointment(
        String name,
        WorkingTime openings,
        double lengthMinutes,
        double noticeMinutes,
        double failure,
        double rebookingMinutes) {

    public Appointment {
        if (!(lengthMinutes >= 0)
                || !(noticeMinutes >= 0)
                || !(rebookingMinutes >= 0)
                || !(failure >= 0 && failure < 1)) {
            throw new IllegalArgumentException("no appointment is like " + name);
        }
    }
}
