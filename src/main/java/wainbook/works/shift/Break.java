package wainbook.works.shift;

/**
 * A time of the day in which nobody works, by the works' local time. It is cut out of every shift that contains it whole.
 *
 * @param fromMinute of the day, 0 to 1439
 * @param toMinute of the day; before {@code fromMinute} it is that of the next day
 */
public record Break(int fromMinute, int toMinute) {

    private static final int DAY_MINUTES = 24 * 60;

    public Break {
        if (fromMinute < 0
                || fromMinute >= DAY_MINUTES
                || toMinute < 0
                || toMinute >= DAY_MINUTES
                || fromMinute == toMinute) {
            throw new IllegalArgumentException(
                    "a break lies between minute 0 and 1439 of a day and lasts, not " + fromMinute + " to " + toMinute);
        }
    }

    boolean endsNextDay() {
        return toMinute < fromMinute;
    }
}
