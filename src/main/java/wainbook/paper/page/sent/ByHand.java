package wainbook.paper.page.sent;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import wainbook.page.Filled;

/**
 * Reads what was written by hand and typed over. A form has one day at its head and times of day beside each line; a time that
 * comes before the form begins is of the next day, since shifts go on over midnight. What cannot be read is a fault at its field.
 */
public final class ByHand {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H[:][.]mm");

    private final ZoneId zone;
    private Filled filled;
    private LocalDate date;
    private Instant begin = Instant.MIN;

    public ByHand(Filled filled, ZoneId zone) {
        this.filled = filled;
        this.zone = zone;
        try {
            date = LocalDate.parse(filled.value("date"));
        } catch (DateTimeParseException noDay) {
            this.filled = filled.wrong("date", "paper.dateWrong");
            date = LocalDate.EPOCH;
        }
    }

    /** The form with every fault found so far. */
    public Filled filled() {
        return filled;
    }

    /** From here on times before this are of the next day. */
    void begins(Instant at) {
        begin = at;
    }

    Optional<String> text(String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty());
    }

    String must(String field) {
        Optional<String> text = text(field);
        if (text.isEmpty()) {
            filled = filled.wrong(field, "paper.blankMissing");
        }
        return text.orElse("–");
    }

    Optional<Instant> time(String field) {
        return text(field).flatMap(text -> read(field, text));
    }

    Instant mustTime(String field) {
        must(field);
        return time(field).orElse(Instant.EPOCH);
    }

    Optional<BigDecimal> number(String field) {
        return text(field).flatMap(text -> {
            String plain = text.replace(',', '.').replace('−', '-');
            if (!plain.matches("[+-]?\\d{1,9}(\\.\\d{1,9})?")) {
                filled = filled.wrong(field, "station.notANumber", text);
                return Optional.empty();
            }
            return Optional.of(new BigDecimal(plain));
        });
    }

    BigDecimal mustNumber(String field) {
        must(field);
        return number(field).orElse(BigDecimal.ZERO);
    }

    void wrong(String field, String key, Object... arguments) {
        filled = filled.wrong(field, key, arguments);
    }

    private Optional<Instant> read(String field, String text) {
        try {
            Instant at = date.atTime(LocalTime.parse(text, CLOCK)).atZone(zone).toInstant();
            return Optional.of(
                    at.isBefore(begin)
                            ? date.plusDays(1)
                                    .atTime(LocalTime.parse(text, CLOCK))
                                    .atZone(zone)
                                    .toInstant()
                            : at);
        } catch (DateTimeParseException noTime) {
            filled = filled.wrong(field, "paper.timeWrong", text);
            return Optional.empty();
        }
    }
}
