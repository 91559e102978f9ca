package wainbook.pack.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import wainbook.page.Filled;

/** A form of this room as it was sent: read field by field, with a fault at each that cannot be read. */
final class SentForm {

    private static final String DECIMAL = "-?\\d{1,9}([.]\\d{1,6})?";

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

    /** Zero where it cannot be read: the fault at the field stops the form. */
    BigDecimal number(String field) {
        String typed = text(field).replace(',', '.');
        if (typed.matches(DECIMAL)) {
            return new BigDecimal(typed);
        }
        filled = filled.wrong(field, "pack.numberFault");
        return BigDecimal.ZERO;
    }

    LocalDate day(String field) {
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException noDay) {
            filled = filled.wrong(field, "pack.dayFault");
            return LocalDate.EPOCH;
        }
    }

    /** The first of them where none was chosen: the fault at the field stops the form. */
    <E extends Enum<E>> E one(String field, E[] of) {
        return maybeOne(field, of).orElseGet(() -> {
            filled = filled.wrong(field, "pack.choose");
            return of[0];
        });
    }

    <E extends Enum<E>> Optional<E> maybeOne(String field, E[] of) {
        return Arrays.stream(of).filter(one -> one.name().equals(text(field))).findFirst();
    }

    /** What is answered by yes or no and must be answered. */
    boolean yes(String field) {
        if (text(field).equals("yes") || text(field).equals("no")) {
            return text(field).equals("yes");
        }
        filled = filled.wrong(field, "pack.choose");
        return false;
    }

    void wrong(String field, String key) {
        filled = filled.wrong(field, key);
    }
}
