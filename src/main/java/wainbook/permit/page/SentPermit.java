package wainbook.permit.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Permitting.ToIssue;
import wainbook.permit.Trait;
import wainbook.permit.Where;
import wainbook.permit.Work;

/** Reads what the form of a new permit sent. */
final class SentPermit {

    /** What was read, and the form as it stands; nothing was read where it has faults. */
    record Read(Optional<ToIssue> asked, Filled filled) {}

    private SentPermit() {}

    static Filled filled(MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = field.equals("id") ? filled : filled.with(field, sent.getFirst(field));
        }
        return filled;
    }

    static Optional<Work> sort(Filled filled) {
        return Arrays.stream(Work.values())
                .filter(one -> one.name().equals(filled.value("sort")))
                .findFirst();
    }

    static Read read(Filled filled, ZonedDateTime now) {
        Optional<Work> sort = sort(filled);
        Optional<Instant> until = next(filled.value("validUntil"), now);
        Filled checked = filled;
        checked = sort.isEmpty() ? checked.wrong("sort", "permit.sortMissing") : checked;
        checked = until.isEmpty() ? checked.wrong("validUntil", "permit.timeFault") : checked;
        return new Read(sort.flatMap(work -> until.map(end -> asked(filled, work, end))), checked);
    }

    private static ToIssue asked(Filled filled, Work work, Instant until) {
        Optional<String> order = text(filled, "order");
        return new ToIssue(
                filled.id(),
                Where.stream(order),
                work,
                order.isPresent() ? Optional.empty() : text(filled, "place"),
                filled.value("work"),
                circumstances(filled),
                precautions(filled, work),
                filled.value("receiver"),
                until);
    }

    private static List<Trait> circumstances(Filled filled) {
        return Trait.circumstances().stream()
                .filter(one -> text(filled, one.name()).isPresent())
                .toList();
    }

    private static List<Ticked> precautions(Filled filled, Work work) {
        return work.precautions().stream()
                .filter(one -> text(filled, one.name()).isPresent())
                .map(one -> new Ticked(one, text(filled, one.name() + "-naming")))
                .toList();
    }

    private static Optional<String> text(Filled filled, String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty());
    }

    /** The next time that the works' clocks show this. */
    private static Optional<Instant> next(String typed, ZonedDateTime now) {
        try {
            ZonedDateTime today = now.with(LocalTime.parse(typed));
            return Optional.of((today.isAfter(now) ? today : today.plusDays(1)).toInstant());
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
