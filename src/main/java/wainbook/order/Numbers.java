package wainbook.order;

import jakarta.ws.rs.NotFoundException;
import java.util.Optional;
import wainbook.ledger.Subject;

/** What a work order's number looks like. */
public final class Numbers {

    public static final String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private Numbers() {}

    /** A number that cannot be one is not found, whatever else is wrong. */
    public static Subject subject(String number) {
        return Optional.of(number)
                .filter(text -> text.matches(FORM))
                .map(Subject::workOrder)
                .orElseThrow(NotFoundException::new);
    }
}
