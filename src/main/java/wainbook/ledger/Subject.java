package wainbook.ledger;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;

/**
 * What a stream of entries is about: one work order, one vehicle unit, one instrument, one person, one check sheet, the
 * forecast of one day, one container of waste, one campaign, or the works as a whole. Written {@code work-order/WB-0142}; the stream's id follows from it, so the same subject is the
 * same stream in every copy of the works.
 */
public record Subject(Sort sort, String code) {

    /** What streams there are, in the order in which a rebuild reads them. */
    public enum Sort {
        WORKS,
        PERSON,
        INSTRUMENT,
        CHECK_SHEET,
        UNIT,
        WORK_ORDER,
        FORECAST,
        CONTAINER,
        CAMPAIGN;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        static Sort of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
        }
    }

    public Subject {
        if (!code.matches("[\\p{Alnum}][\\p{Alnum}._-]{0,79}")) {
            throw new IllegalArgumentException(
                    "a code is letters, digits, dots, dashes and underscores, at most 80; not: " + code);
        }
    }

    public static Subject works() {
        return new Subject(Sort.WORKS, "works");
    }

    public static Subject person(String number) {
        return new Subject(Sort.PERSON, number);
    }

    public static Subject instrument(String code) {
        return new Subject(Sort.INSTRUMENT, code);
    }

    public static Subject checkSheet(String code) {
        return new Subject(Sort.CHECK_SHEET, code);
    }

    public static Subject workOrder(String number) {
        return new Subject(Sort.WORK_ORDER, number);
    }

    /** What was forecast on the morning of a day. */
    public static Subject forecast(LocalDate day) {
        return new Subject(Sort.FORECAST, day.toString());
    }

    public static Subject campaign(String number) {
        return new Subject(Sort.CAMPAIGN, number);
    }

    /** Reads the written form; the exception says what is wrong with it. */
    public static Subject parse(String written) {
        int slash = written.indexOf('/');
        if (slash < 0) {
            throw new IllegalArgumentException("a subject is sort/code, not: " + written);
        }
        return new Subject(Sort.of(written.substring(0, slash)), written.substring(slash + 1));
    }

    public UUID stream() {
        return UUID.nameUUIDFromBytes(toString().getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String toString() {
        return sort.word() + "/" + code;
    }
}
