package wainbook.waste.act;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.act.Reason;

/** What words and figures of this room must be like to be kept at all. */
final class Typed {

    static final int LONGEST = 200;
    private static final BigDecimal MOST_KG = BigDecimal.valueOf(40_000);

    private Typed() {}

    static Optional<Reason> words(String text, String field) {
        return text.isBlank() ? Optional.of(missing(field)) : length(text, field);
    }

    static Optional<Reason> maybe(Optional<String> text, String field) {
        return text.flatMap(some -> length(some, field));
    }

    static Optional<Reason> length(String text, String field) {
        return text.length() > LONGEST
                ? Optional.of(
                        Reason.of("waste.tooLong", Reason.WORKS_RULE, LONGEST).liftedAt("#" + field))
                : Optional.empty();
    }

    static Reason missing(String field) {
        return Reason.of("waste.missing", Reason.WORKS_RULE, LONGEST).liftedAt("#" + field);
    }

    /** Above 0, no more than a loaded truck, to the gram. */
    static Optional<Reason> mass(BigDecimal kg, String field) {
        return kg.signum() <= 0
                        || kg.compareTo(MOST_KG) > 0
                        || kg.stripTrailingZeros().scale() > 3
                ? Optional.of(
                        Reason.of("waste.massFault", Reason.WORKS_RULE, MOST_KG).liftedAt("#" + field))
                : Optional.empty();
    }
}
