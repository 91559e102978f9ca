package wainbook.handover.carbon;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Predicate;
import wainbook.engineering.energy.Carbon;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.Saved;
import wainbook.handover.carbon.CarbonSaying.Used;

/**
 * What a conversion saves by its basis and the factors of a year: three cases, each worked by {@link Carbon}. The least
 * favourable takes low litres, high kilowatt-hours, low charging efficiency, packs at their highest and a grid that does not
 * fall; the most favourable the other ends and the grid's fall.
 */
public record CarbonWorking(Basis basis, List<Used> factors) {

    private static final double HUNDRED = 100;

    /** One case of the three. */
    public enum Case {
        LOW,
        MID,
        HIGH
    }

    public CarbonWorking {
        factors = List.copyOf(factors);
    }

    public double dieselKgPerLitre() {
        return sum(Factor::diesel);
    }

    public double dieselAtTheVehicleKgPerLitre() {
        return sum(factor -> factor == Factor.DIESEL_VEHICLE);
    }

    /** In the first year, from the well. */
    public double gridKgPerKwh() {
        return sum(factor -> !factor.diesel());
    }

    /** Over all years, where the factor falls by the same share each year. */
    double gridOverTheYears(Case one) {
        double left = one == Case.LOW ? 1 : 1 - basis.gridFallPercent().doubleValue() / HUNDRED;
        double sum = 0;
        for (int year = 0; year < basis.years(); year++) {
            sum += Math.pow(left, year);
        }
        return gridKgPerKwh() * sum / basis.years();
    }

    /** What goes into the calculation of a case. */
    public Carbon.Inputs inputs(Case one) {
        double packs = at(basis.packKgPerKwh(), opposite(one));
        return new Carbon.Inputs(
                basis.annualKm(),
                basis.years(),
                at(basis.litresPer100Km(), one),
                fromTheGrid(one),
                gridOverTheYears(one),
                dieselKgPerLitre(),
                basis.packKwh().doubleValue(),
                packs,
                packs);
    }

    /** Kilowatt-hours the grid gives for a kilometre. */
    public double fromTheGrid(Case one) {
        return at(basis.kwhPerKm(), opposite(one)) / (at(basis.chargingPercent(), one) / HUNDRED);
    }

    /** In the first year by the likely figures, packs not counted. */
    public double yearlyKg() {
        return results(new Carbon.Inputs(
                        basis.annualKm(),
                        1,
                        at(basis.litresPer100Km(), Case.MID),
                        fromTheGrid(Case.MID),
                        gridKgPerKwh(),
                        dieselKgPerLitre(),
                        0,
                        0,
                        0))
                .savedKgLow();
    }

    public double savedKg(Case one) {
        return results(inputs(one)).savedKgLow();
    }

    /** To make the packs, by the likely factor; with {@link #yearlyKg} it says after how long they are repaid. */
    public double packKg(Case one) {
        return basis.packKwh().doubleValue() * at(basis.packKgPerKwh(), one);
    }

    public Saved saved() {
        return new Saved(
                tonnes(yearlyKg()),
                tonnes(savedKg(Case.LOW)),
                tonnes(savedKg(Case.MID)),
                tonnes(savedKg(Case.HIGH)),
                tonnes(packKg(Case.LOW)),
                tonnes(packKg(Case.MID)),
                tonnes(packKg(Case.HIGH)));
    }

    private static Carbon.Results results(Carbon.Inputs inputs) {
        return new Carbon()
                .of(inputs)
                .fold(
                        working -> working.results(),
                        faults -> {
                            throw new IllegalArgumentException(String.valueOf(faults));
                        },
                        refusal -> {
                            throw new IllegalArgumentException(String.valueOf(refusal));
                        });
    }

    private double sum(Predicate<Factor> of) {
        return factors.stream()
                .filter(used -> of.test(used.factor()))
                .map(Used::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
    }

    private static double at(List<BigDecimal> range, Case one) {
        BigDecimal figure = switch (one) {
            case LOW -> range.get(0);
            case MID -> range.get(1);
            case HIGH -> range.get(2);
        };
        return figure.doubleValue();
    }

    private static Case opposite(Case one) {
        return switch (one) {
            case LOW -> Case.HIGH;
            case MID -> Case.MID;
            case HIGH -> Case.LOW;
        };
    }

    private static BigDecimal tonnes(double kg) {
        return BigDecimal.valueOf(kg / 1000).setScale(2, RoundingMode.HALF_UP);
    }
}
