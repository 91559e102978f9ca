package wainbook.waste;

import jakarta.ws.rs.NotFoundException;
import java.util.Optional;
import wainbook.ledger.Subject;

/** What the number on a container's label looks like. It is given once; a drum that comes back empty gets another. */
public final class Labels {

    public static final String FORM = "[A-Za-z0-9][A-Za-z0-9._-]{0,19}";

    private Labels() {}

    public static boolean fits(String label) {
        return label.matches(FORM);
    }

    /** A label that cannot be one is not found, whatever else is wrong. */
    public static Subject subject(String label) {
        return Optional.of(label)
                .filter(Labels::fits)
                .map(text -> new Subject(Subject.Sort.CONTAINER, text))
                .orElseThrow(NotFoundException::new);
    }

    public static String path(String label) {
        return "/waste/containers/" + label;
    }
}
