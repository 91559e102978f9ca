package wainbook.handover.carbon;

import java.math.BigDecimal;
import java.util.List;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of a vehicle's carbon statement. */
public sealed interface CarbonSaying extends Saying {

    /**
     * What the works states. Each range is three figures: the least, what is likely, the most.
     *
     * @param litresPer100Km of the operator's own diesel on this duty
     * @param kwhPerKm at the charging inlet
     * @param chargingPercent of what the grid gives arrives at the inlet
     * @param packKwh nominal, of all packs
     * @param packKgPerKwh to make a kilowatt-hour of pack
     * @param gridFallPercent by which the grid's factor falls each year, as the works supposes; 0 keeps it
     */
    record Basis(
            int annualKm,
            int years,
            List<BigDecimal> litresPer100Km,
            List<BigDecimal> kwhPerKm,
            List<BigDecimal> chargingPercent,
            BigDecimal packKwh,
            List<BigDecimal> packKgPerKwh,
            BigDecimal gridFallPercent) {
        public Basis {
            litresPer100Km = List.copyOf(litresPer100Km);
            kwhPerKm = List.copyOf(kwhPerKm);
            chargingPercent = List.copyOf(chargingPercent);
            packKgPerKwh = List.copyOf(packKgPerKwh);
        }
    }

    /** A factor as it was used. */
    record Used(Factor factor, BigDecimal value, String unit, int year, String source, CarbonSet.Standing standing) {}

    /**
     * What came of it, in tonnes of carbon dioxide equivalents, rounded to 0.01; below nought where nothing is saved.
     *
     * @param yearlyT saved in the first year by the likely figures, packs not counted
     * @param lowT saved over all years with every figure at its least favourable
     */
    record Saved(
            BigDecimal yearlyT,
            BigDecimal lowT,
            BigDecimal midT,
            BigDecimal highT,
            BigDecimal packLowT,
            BigDecimal packMidT,
            BigDecimal packHighT) {}

    /**
     * The works states what a conversion saves; a later statement takes the place of an earlier one.
     *
     * @param year of the factors
     */
    @Kind("handover.carbonStated/1")
    record CarbonStated(int statement, Basis basis, int year, String set, List<Used> factors, Saved saved)
            implements CarbonSaying {
        public CarbonStated {
            factors = List.copyOf(factors);
        }
    }
}
