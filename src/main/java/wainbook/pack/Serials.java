package wainbook.pack;

import jakarta.ws.rs.NotFoundException;
import java.util.Optional;
import wainbook.ledger.Subject;

/** What a pack's serial number looks like, and the stream that it has. */
public final class Serials {

    public static final String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private Serials() {}

    public static boolean fits(String serial) {
        return serial.matches(FORM);
    }

    /** A number that cannot be one is not found, whatever else is wrong. */
    public static Subject subject(String serial) {
        return Optional.of(serial)
                .filter(Serials::fits)
                .map(text -> new Subject(Subject.Sort.UNIT, text))
                .orElseThrow(NotFoundException::new);
    }
}
