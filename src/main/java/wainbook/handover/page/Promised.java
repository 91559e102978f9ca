package wainbook.handover.page;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import wainbook.page.Words;

/** By when the vehicles are promised that a list shows. */
public enum Promised {
    WHENEVER,
    THIS_WEEK,
    LATE;

    private static final LocalDate FAR = LocalDate.of(9999, 12, 31);

    static Promised of(String word) {
        return Arrays.stream(values())
                .filter(value -> value.name().equals(word))
                .findFirst()
                .orElse(WHENEVER);
    }

    /** The last day that is shown; a week ends on Sunday. */
    LocalDate lastDay(LocalDate today) {
        return switch (this) {
            case WHENEVER -> FAR;
            case THIS_WEEK -> today.with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
            case LATE -> today.minusDays(1);
        };
    }

    String word() {
        return Words.of("handover.promised." + name());
    }
}
