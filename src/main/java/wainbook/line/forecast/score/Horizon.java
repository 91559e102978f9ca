package wainbook.line.forecast.score;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import wainbook.line.forecast.kept.Prediction;
import wainbook.works.shift.Shifts;

/**
 * How far ahead a forecast looked: working days from the day on which it was made to that of its own median. The day on which the
 * vehicle really finished must not choose the forecasts that it is held against.
 *
 * @param shifts of the works, for its zone and holidays
 * @param worked whether a day is worked
 */
record Horizon(Shifts shifts, Predicate<LocalDate> worked) {

    private static final double MEDIAN = 0.5;
    private static final int FARTHEST_DAYS = 60;

    /** Of each vehicle the first forecast that looked so many working days ahead. */
    List<Prediction> of(int days, List<Prediction> said) {
        Set<String> taken = new HashSet<>();
        var chosen = new ArrayList<Prediction>();
        said.stream()
                .sorted(Comparator.comparing(Prediction::at))
                .filter(one -> ahead(one) == days)
                .filter(one -> taken.add(one.order()))
                .forEach(chosen::add);
        return chosen;
    }

    private long ahead(Prediction one) {
        LocalDate made = LocalDate.ofInstant(one.at(), shifts.zone());
        LocalDate median = LocalDate.ofInstant(one.quantile(MEDIAN), shifts.zone());
        return made.isBefore(median)
                ? made.plusDays(1)
                        .datesUntil(median.plusDays(1))
                        .limit(2L * FARTHEST_DAYS)
                        .filter(worked)
                        .count()
                : 0;
    }
}
