package wainbook.pack.act;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.act.Receiving.ToReceive;

/** What figures and words of a pack must be like to be kept at all. */
final class TypedRule {

    static final int LONGEST_WORDS = 500;
    private static final int LONGEST_NAME = 80;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MOST_V = BigDecimal.valueOf(1500);
    private static final BigDecimal COLDEST_C = BigDecimal.valueOf(-60);
    private static final BigDecimal HOTTEST_C = BigDecimal.valueOf(1200);

    private TypedRule() {}

    static List<Reason> receipt(ToReceive asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        name(asked.packType(), "packType").ifPresent(against::add);
        name(asked.lot(), "lot").ifPresent(against::add);
        name(asked.place(), "place").ifPresent(against::add);
        asked.testSummary().flatMap(text -> name(text, "testSummary")).ifPresent(against::add);
        asked.certificate().flatMap(text -> name(text, "certificate")).ifPresent(against::add);
        words(asked.words()).ifPresent(against::add);
        charge(asked.chargePercent()).ifPresent(against::add);
        volts(asked.voltageV(), "voltageV").ifPresent(against::add);
        volts(asked.read().workingV(), "workingV").ifPresent(against::add);
        volts(asked.read().testV(), "testV").ifPresent(against::add);
        if (asked.read().measuredOhm().signum() < 0) {
            against.add(Reason.of("pack.insulationFault", Reason.WORKS_RULE).liftedAt("#measured"));
        }
        if (asked.made().isAfter(today)) {
            against.add(Reason.of("pack.madeInFuture", Reason.WORKS_RULE, today).liftedAt("#made"));
        }
        for (Looked look : Looked.values()) {
            if (asked.looked().stream().map(Seen::what).filter(look::equals).count() != 1) {
                against.add(Reason.of("pack.notLookedAt", Reason.WORKS_RULE).liftedAt("#" + look.name()));
            }
        }
        return against;
    }

    static Optional<Reason> name(String text, String field) {
        return text.isBlank() || text.length() > LONGEST_NAME
                ? Optional.of(Reason.of("pack.nameMissing", Reason.WORKS_RULE, LONGEST_NAME)
                        .liftedAt("#" + field))
                : Optional.empty();
    }

    static Optional<Reason> words(Optional<String> words) {
        return words.filter(text -> text.length() > LONGEST_WORDS)
                .map(text -> Reason.of("pack.wordsTooLong", Reason.WORKS_RULE, LONGEST_WORDS)
                        .liftedAt("#words"));
    }

    static Optional<Reason> charge(BigDecimal percent) {
        return within(percent, BigDecimal.ZERO, HUNDRED, "chargePercent");
    }

    static Optional<Reason> celsius(BigDecimal degrees, String field) {
        return within(degrees, COLDEST_C, HOTTEST_C, field);
    }

    private static Optional<Reason> volts(BigDecimal volts, String field) {
        return within(volts, BigDecimal.ONE, MOST_V, field);
    }

    private static Optional<Reason> within(BigDecimal value, BigDecimal least, BigDecimal most, String field) {
        return value.compareTo(least) < 0 || value.compareTo(most) > 0
                ? Optional.of(Reason.of(
                                "pack.figureOutside",
                                Reason.WORKS_RULE,
                                value.toPlainString(),
                                least.toPlainString(),
                                most.toPlainString())
                        .liftedAt("#" + field))
                : Optional.empty();
    }
}
