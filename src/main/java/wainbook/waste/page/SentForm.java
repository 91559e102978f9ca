package wainbook.waste.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import wainbook.page.Filled;

/** A form of this room as it was sent: read field by field, with a fault at each that cannot be read. */
final class SentForm {

    private static final String DECIMAL = "\\d{1,9}([.]\\d{1,3})?";

    private Filled filled;

    private SentForm(Filled filled) {
        this.filled = filled;
    }

    static SentForm of(MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = field.equals("id") ? filled : filled.with(field, sent.getFirst(field));
        }
        return new SentForm(filled);
    }

    Filled filled() {
        return filled;
    }

    boolean right() {
        return filled.right();
    }

    String text(String field) {
        return filled.value(field);
    }

    Optional<String> maybe(String field) {
        return Optional.of(text(field)).filter(text -> !text.isEmpty());
    }

    boolean ticked(String field) {
        return text(field).equals("yes");
    }

    /** Zero where it cannot be read: the fault at the field stops the form. */
    BigDecimal number(String field) {
        String typed = text(field).replace(',', '.');
        if (typed.matches(DECIMAL)) {
            return new BigDecimal(typed);
        }
        filled = filled.wrong(field, "waste.numberFault");
        return BigDecimal.ZERO;
    }

    Optional<BigDecimal> maybeNumber(String field) {
        return maybe(field).map(text -> number(field));
    }

    LocalDate day(String field) {
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException noDay) {
            filled = filled.wrong(field, "waste.dayFault");
            return LocalDate.EPOCH;
        }
    }

    Optional<LocalDate> maybeDay(String field) {
        return maybe(field).map(text -> day(field));
    }

    /** The first of them where none was chosen: the fault at the field stops the form. */
    <E extends Enum<E>> E one(String field, E[] of) {
        return Arrays.stream(of)
                .filter(one -> one.name().equals(text(field)))
                .findFirst()
                .orElseGet(() -> {
                    filled = filled.wrong(field, "waste.choose");
                    return of[0];
                });
    }
}
