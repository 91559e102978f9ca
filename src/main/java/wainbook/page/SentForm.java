package wainbook.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;

/** A form as it was sent: read field by field, with a fault at each that cannot be read. */
public final class SentForm {

    private static final String DECIMAL = "-?\\d{1,9}([.]\\d{1,6})?";

    private Filled filled;

    private SentForm(Filled filled) {
        this.filled = filled;
    }

    public static SentForm of(MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = field.equals("id") ? filled : filled.with(field, sent.getFirst(field));
        }
        return new SentForm(filled);
    }

    public Filled filled() {
        return filled;
    }

    public boolean right() {
        return filled.right();
    }

    public String text(String field) {
        return filled.value(field);
    }

    public Optional<String> maybe(String field) {
        return Optional.of(text(field)).filter(text -> !text.isEmpty());
    }

    /** Zero where it cannot be read: the fault at the field stops the form. */
    public BigDecimal number(String field) {
        String typed = text(field).replace(',', '.');
        if (typed.matches(DECIMAL)) {
            return new BigDecimal(typed);
        }
        filled = filled.wrong(field, "page.numberFault");
        return BigDecimal.ZERO;
    }

    /** Empty where nothing was written. */
    public Optional<BigDecimal> maybeNumber(String field) {
        return maybe(field).map(text -> number(field));
    }

    /** Zero where it is no whole number that fits: the fault at the field stops the form. */
    public int whole(String field) {
        String typed = text(field).replaceAll("[ \u00a0\u202f]", "");
        if (typed.matches("-?\\d{1,9}")) {
            return Integer.parseInt(typed);
        }
        filled = filled.wrong(field, "page.wholeFault");
        return 0;
    }

    public LocalDate day(String field) {
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException noDay) {
            filled = filled.wrong(field, "page.dayFault");
            return LocalDate.EPOCH;
        }
    }

    /** The first of them where none was chosen: the fault at the field stops the form. */
    public <E extends Enum<E>> E one(String field, E[] of) {
        return maybeOne(field, of).orElseGet(() -> {
            filled = filled.wrong(field, "page.choose");
            return of[0];
        });
    }

    public <E extends Enum<E>> Optional<E> maybeOne(String field, E[] of) {
        return Arrays.stream(of).filter(one -> one.name().equals(text(field))).findFirst();
    }

    /** What is answered by yes or no and must be answered. */
    public boolean yes(String field) {
        if (text(field).equals("yes") || text(field).equals("no")) {
            return text(field).equals("yes");
        }
        filled = filled.wrong(field, "page.choose");
        return false;
    }

    public void wrong(String field, String key) {
        filled = filled.wrong(field, key);
    }
}
