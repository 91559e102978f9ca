package wainbook.safety.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.safety.Nameless;
import wainbook.safety.miss.Reporting.ToReport;
import wainbook.safety.stop.Stopping.ToStop;

/**
 * What one touch says: read so that nothing in it can be wrong. An id that cannot be read is drawn anew, and a vehicle or
 * station that is none is left out.
 *
 * @param keepsPlace whether a report without a name keeps where it was
 */
record Touch(
        UUID id,
        Optional<String> order,
        Optional<String> station,
        Optional<String> words,
        boolean nameless,
        boolean keepsPlace) {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    static Touch sent(String id, MultivaluedMap<String, String> form) {
        return new Touch(
                id(id),
                text(form.getFirst("atOrder")).filter(code -> code.matches(CODE)),
                text(form.getFirst("atStation")).filter(code -> code.matches(CODE)),
                text(form.getFirst("words")),
                text(form.getFirst("nameless")).isPresent(),
                text(form.getFirst("place")).isPresent());
    }

    private static UUID id(String text) {
        try {
            return UUID.fromString(String.valueOf(text));
        } catch (IllegalArgumentException unreadable) {
            return UUID.randomUUID();
        }
    }

    static Optional<String> text(String typed) {
        return Optional.ofNullable(typed).map(String::strip).filter(text -> !text.isEmpty());
    }

    Actor by(Actor actor) {
        return Nameless.of(actor, nameless);
    }

    ToReport report() {
        boolean placed = !nameless || keepsPlace;
        return new ToReport(id, placed ? order : Optional.empty(), placed ? station : Optional.empty(), words);
    }

    /** A stop keeps what it stops. The station beside a vehicle stops nothing more, so that it is kept as a report's is. */
    ToStop stop() {
        boolean placed = !nameless || keepsPlace || order.isEmpty();
        return new ToStop(id, order, placed ? station : Optional.empty(), words);
    }
}
