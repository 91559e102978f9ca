package wainbook.works.shift;

import java.time.DayOfWeek;
import java.util.List;

/**
 * One shift, by the works' local time.
 *
 * @param fromMinute of the day, 0 to 1439
 * @param toMinute of the day; at or before {@code fromMinute} it is that of the next day
 * @param weekdays on which it begins
 * @param places codes of the places that it works at; none means the whole works
 */
public record Shift(String title, int fromMinute, int toMinute, List<DayOfWeek> weekdays, List<String> places) {

    private static final int DAY_MINUTES = 24 * 60;

    public Shift {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a shift has a title");
        }
        if (fromMinute < 0 || fromMinute >= DAY_MINUTES || toMinute < 0 || toMinute >= DAY_MINUTES) {
            throw new IllegalArgumentException("a shift begins and ends between minute 0 and 1439 of a day, not "
                    + fromMinute + " to " + toMinute);
        }
        weekdays = List.copyOf(weekdays);
        places = List.copyOf(places);
    }

    /** A shift of the whole works. */
    public static Shift everywhere(String title, int fromMinute, int toMinute, List<DayOfWeek> weekdays) {
        return new Shift(title, fromMinute, toMinute, weekdays, List.of());
    }

    boolean worksAt(String place) {
        return places.isEmpty() || places.contains(place);
    }

    boolean endsNextDay() {
        return toMinute <= fromMinute;
    }
}
