package wainbook.handover.record.act;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.act.Reason;

/** What words, figures and days of a handover record must be like to be kept at all. */
final class Typed {

    static final int LONGEST = 200;
    static final int LONGEST_TEXT = 2000;
    private static final int FARTHEST_KM = 9_999_999;

    private Typed() {}

    static Optional<Reason> words(String text, String field) {
        return words(text, field, LONGEST);
    }

    static Optional<Reason> text(String text, String field) {
        return words(text, field, LONGEST_TEXT);
    }

    private static Optional<Reason> words(String text, String field, int longest) {
        return text.isBlank()
                ? Optional.of(Reason.of("handover.recordMissing", Reason.WORKS_RULE, longest)
                        .liftedAt("#" + field))
                : length(text, field, longest);
    }

    static Optional<Reason> length(String text, String field, int longest) {
        return text.length() > longest
                ? Optional.of(Reason.of("handover.tooLong", Reason.WORKS_RULE, longest)
                        .liftedAt("#" + field))
                : Optional.empty();
    }

    /** No less than any reading before. */
    static Optional<Reason> odometer(int km, int knownKm, String field) {
        return km < knownKm || km > FARTHEST_KM
                ? Optional.of(Reason.of("handover.roadOdometerBack", Reason.WORKS_RULE, knownKm)
                        .liftedAt("#" + field))
                : Optional.empty();
    }

    static Optional<Reason> day(LocalDate day, LocalDate first, LocalDate last, String field) {
        return day.isBefore(first) || day.isAfter(last)
                ? Optional.of(Reason.of("handover.recordDay", Reason.WORKS_RULE, first, last)
                        .liftedAt("#" + field))
                : Optional.empty();
    }
}
