package wainbook.trace;

import java.util.Locale;
import wainbook.page.Words;

/**
 * Something that an entry names and that it can be found by.
 *
 * @param shown as it stands on record
 * @param code as it is searched for
 */
public record Mention(Sort sort, String shown, String code) {

    static final int LONGEST = 120;

    /** What can be searched for. */
    public enum Sort {
        ORDER,
        VIN,
        REGISTRATION,
        SERIAL,
        LOT,
        SOFTWARE,
        SHEET_REVISION,
        PARTS_REVISION,
        INSTRUMENT,
        JOINT,
        /** A joint with the revision of the works’ joints: found by when its entry was made, and never kept in a row. */
        JOINT_REVISION,
        PERSON,
        NONCONFORMITY,
        PERMIT,
        LOCK,
        CONTAINER,
        NOTE,
        DOCUMENT,
        DOCUMENT_REVISION;

        public String word() {
            return Words.of("trace.sort." + name());
        }

        /** Several of them, as a heading. */
        String words() {
            return Words.of("trace.sorts." + name());
        }
    }

    public Mention {
        shown = shown.length() > LONGEST ? shown.substring(0, LONGEST) : shown;
    }

    static Mention of(Sort sort, String shown) {
        return new Mention(sort, shown, code(shown));
    }

    /** The same thing under a shorter code as well. */
    Mention alsoBy(String shorter) {
        return new Mention(sort, shown, code(shorter));
    }

    /** As it is searched for: in capitals, without blanks. */
    public static String code(String text) {
        String plain = text.replaceAll("\\s+", "").toUpperCase(Locale.ROOT);
        return plain.substring(0, Math.min(plain.length(), LONGEST));
    }
}
