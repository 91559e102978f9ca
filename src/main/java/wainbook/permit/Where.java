package wainbook.permit;

import java.util.Optional;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;

/** How addresses and lists name the stream that a permit lies in. */
public final class Where {

    /** Stands for the works' places; no work order's number can begin like that. */
    public static final String WORKS = "_works";

    private Where() {}

    public static String word(Subject stream) {
        return stream.equals(Subject.works()) ? WORKS : stream.code();
    }

    public static Subject stream(String word) {
        return word.equals(WORKS) ? Subject.works() : Numbers.subject(word);
    }

    /** Nothing named is a place of the works. */
    public static Subject stream(Optional<String> order) {
        return order.filter(text -> !text.isBlank()).map(Where::stream).orElseGet(Subject::works);
    }
}
