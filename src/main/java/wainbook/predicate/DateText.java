package wainbook.predicate;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** A calendar date as people write it in a condition or a file: ISO 8601, year-month-day. */
final class DateText {

    private DateText() {}

    static Optional<LocalDate> read(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDate) {
            return Optional.empty();
        }
    }
}
