package wainbook.line.milestone.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.OrdersPassed;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Form;

/** What is asked of the list, as it was typed and as it was understood; what cannot be read filters nothing, and is told. */
record AskedMilestones(Form form, OrdersPassed orders) {

    static AskedMilestones of(
            Optional<String> search,
            Optional<String> phase,
            Optional<String> milestone,
            Optional<String> from,
            Optional<String> to,
            ZoneId zone) {
        Form form = Form.EMPTY
                .with("search", search.orElse("").strip())
                .with("phase", phase.orElse(""))
                .with("milestone", milestone.orElse(""))
                .with("from", from.orElse(""))
                .with("to", to.orElse(""));
        Optional<LocalDate> first = day(from);
        Optional<LocalDate> last = day(to);
        if (first.isEmpty() && !form.value("from").isBlank()) {
            form = form.wrong("from", "line.milestoneDay");
        }
        if (last.isEmpty() && !form.value("to").isBlank()) {
            form = form.wrong("to", "line.milestoneDay");
        }
        return new AskedMilestones(
                form,
                new OrdersPassed(
                        form.value("search"),
                        named(Phase.values(), phase),
                        named(Milestone.values(), milestone),
                        first.map(day -> begin(day, zone)),
                        last.map(day -> begin(day.plusDays(1), zone))));
    }

    private static Instant begin(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    private static Optional<LocalDate> day(Optional<String> typed) {
        try {
            return typed.map(String::strip).filter(text -> !text.isEmpty()).map(LocalDate::parse);
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }

    private static <E extends Enum<E>> Optional<E> named(E[] values, Optional<String> name) {
        return Arrays.stream(values)
                .filter(value -> Optional.of(value.name()).equals(name))
                .findFirst();
    }

    boolean filtered() {
        return form.typed().values().stream().anyMatch(value -> !value.isBlank());
    }

    String query() {
        return "?search=" + coded("search") + "&phase=" + coded("phase") + "&milestone=" + coded("milestone") + "&from="
                + coded("from") + "&to=" + coded("to");
    }

    private String coded(String field) {
        return URLEncoder.encode(form.value(field), StandardCharsets.UTF_8);
    }
}
