package wainbook.order.limit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The time in which a rule is in force.
 *
 * @param from first day; absent: longer than any vehicle is of interest
 * @param to last day; absent: open
 * @param doubtDays the first day is in doubt: so many days on both sides of it nobody can tell
 */
public record Force(Optional<LocalDate> from, Optional<LocalDate> to, Optional<Integer> doubtDays) {

    public static final Force ALWAYS = new Force(Optional.empty(), Optional.empty(), Optional.empty());

    public boolean on(LocalDate day) {
        return from.map(first -> !day.isBefore(first)).orElse(true)
                && to.map(last -> !day.isAfter(last)).orElse(true);
    }

    public boolean doubtfulOn(LocalDate day) {
        return doubtDays
                .filter(days -> Math.abs(ChronoUnit.DAYS.between(from.orElseThrow(), day)) <= days)
                .isPresent();
    }
}
