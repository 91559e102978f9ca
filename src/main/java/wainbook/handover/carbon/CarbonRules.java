package wainbook.handover.carbon;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.carbon.CarbonSaying.Basis;

/** What a basis must be like to be stated. Bounds are the works' own, against slips. */
final class CarbonRules {

    private static final int MOST_KM = 300_000;
    private static final int MOST_YEARS = 20;

    private CarbonRules() {}

    static List<Reason> against(Basis basis, int year, CarbonSets sets) {
        var against = new ArrayList<Reason>();
        if (basis.annualKm() < 1 || basis.annualKm() > MOST_KM) {
            against.add(Reason.of("handover.carbonNumber", Reason.WORKS_RULE, 1, MOST_KM)
                    .liftedAt("#annualKm"));
        }
        if (basis.years() < 1 || basis.years() > MOST_YEARS) {
            against.add(Reason.of("handover.carbonNumber", Reason.WORKS_RULE, 1, MOST_YEARS)
                    .liftedAt("#years"));
        }
        range(basis.litresPer100Km(), 1, 100, "litresMid").ifPresent(against::add);
        range(basis.kwhPerKm(), 0.1, 10, "kwhMid").ifPresent(against::add);
        range(basis.chargingPercent(), 50, 100, "chargingMid").ifPresent(against::add);
        range(basis.packKgPerKwh(), 1, 500, "packMid").ifPresent(against::add);
        if (basis.packKwh().signum() <= 0 || basis.packKwh().doubleValue() > 2000) {
            against.add(Reason.of("handover.carbonNumber", Reason.WORKS_RULE, 1, 2000)
                    .liftedAt("#packKwh"));
        }
        if (basis.gridFallPercent().signum() < 0 || basis.gridFallPercent().doubleValue() > 30) {
            against.add(
                    Reason.of("handover.carbonNumber", Reason.WORKS_RULE, 0, 30).liftedAt("#gridFallPercent"));
        }
        set(year, sets).ifPresent(against::add);
        return against;
    }

    private static Optional<Reason> range(List<BigDecimal> range, double least, double most, String field) {
        boolean sound = range.size() == 3
                && range.get(0).compareTo(range.get(1)) <= 0
                && range.get(1).compareTo(range.get(2)) <= 0
                && range.get(0).doubleValue() >= least
                && range.get(2).doubleValue() <= most;
        return sound
                ? Optional.empty()
                : Optional.of(Reason.of("handover.carbonRange", Reason.WORKS_RULE, text(least), text(most))
                        .liftedAt("#" + field));
    }

    private static String text(double bound) {
        return BigDecimal.valueOf(bound).stripTrailingZeros().toPlainString();
    }

    private static Optional<Reason> set(int year, CarbonSets sets) {
        Optional<CarbonSet> set = sets.of(year);
        if (set.isEmpty()) {
            return Optional.of(Reason.of("handover.carbonNoSet", Reason.WORKS_RULE, String.valueOf(year))
                    .liftedAt("#year"));
        }
        return set.filter(found -> !found.whole())
                .map(found -> Reason.of(
                                "handover.carbonSetPartial",
                                Reason.WORKS_RULE,
                                String.valueOf(year),
                                found.missingInWords())
                        .liftedAt("#year"));
    }
}
