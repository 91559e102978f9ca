package wainbook.line.measure.page;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.line.measure.Period;
import wainbook.page.Form;
import wainbook.works.shift.WorksDay;

/** Days of the works, both included, and a kind of vehicle, as they were asked for. */
public class AskedPeriod {

    @RestQuery
    Optional<String> from = Optional.empty();

    @RestQuery
    Optional<String> to = Optional.empty();

    @RestQuery
    Optional<String> kind = Optional.empty();

    /** What was typed, with every fault at its field; days that were not asked for are set. */
    Form form(WorksDay day, LocalDate today) {
        LocalDate last = date(to).orElse(today);
        LocalDate first = date(from).orElseGet(() -> Period.lastWorkingDays(last, day));
        Form form = Form.EMPTY
                .with("from", typed(from).orElse(first.toString()))
                .with("to", typed(to).orElse(last.toString()))
                .with("kind", kind());
        form = checked(checked(form, "from", from, today), "to", to, today);
        if (form.right() && first.isAfter(today)) {
            return form.wrong("from", "line.measuresFuture");
        }
        if (form.right() && first.isAfter(last)) {
            return form.wrong("to", "line.measuresBackwards");
        }
        if (form.right() && ChronoUnit.DAYS.between(first, last) >= Period.MOST_DAYS) {
            return form.wrong("from", "line.measuresTooLong", Period.MOST_DAYS);
        }
        return form;
    }

    String kind() {
        return kind.orElse("").strip();
    }

    private static Form checked(Form form, String field, Optional<String> asked, LocalDate today) {
        return typed(asked).isPresent() && date(asked).isEmpty()
                ? form.wrong(field, "line.measuresNoDay", today)
                : form;
    }

    private static Optional<String> typed(Optional<String> asked) {
        return asked.map(String::strip).filter(text -> !text.isEmpty());
    }

    static Optional<LocalDate> date(Optional<String> asked) {
        try {
            return typed(asked).map(LocalDate::parse).filter(date -> date.getYear() >= 1 && date.getYear() <= 9999);
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }
}
