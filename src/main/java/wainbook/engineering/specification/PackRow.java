package wainbook.engineering.specification;

import java.util.List;
import wainbook.engineering.weights.PayloadLimit;
import wainbook.engineering.weights.TwoAxles;

/**
 * One number of packs against its payload.
 *
 * @param kwhPerKm of the usual day, hydraulic work counted
 * @param rangeNewKm at this duty on a mild day; likewise {@code rangeAtEndKm}
 * @param rangeColdNewKm at this duty on the coldest day; likewise {@code rangeColdAtEndKm}
 * @param worstKwh median need of the worst day, which is as cold
 * @param oddsNew that the worst day is met; likewise {@code oddsAtEnd}
 * @param empty without payload
 * @param laden with the payload that is wanted, or the greatest if that is less
 * @param middayKwh to charge on the worst day at the end of life so that the wanted odds are reached
 * @param ruledOut empty where it is feasible
 */
public record PackRow(
        int packs,
        PayloadLimit payload,
        double drivingKwh,
        double usualKwh,
        double kwhPerKm,
        double rangeNewKm,
        double rangeAtEndKm,
        double rangeColdNewKm,
        double rangeColdAtEndKm,
        double worstKwh,
        double oddsNew,
        double oddsAtEnd,
        TwoAxles empty,
        TwoAxles laden,
        double middayKwh,
        List<RuledOut> ruledOut) {

    public PackRow {
        ruledOut = List.copyOf(ruledOut);
    }

    public boolean feasible() {
        return ruledOut.isEmpty();
    }

    /** Whether only energy is short, which charging in between would mend. */
    public boolean feasibleWithMidday() {
        return ruledOut.stream().allMatch(RuledOut.Energy.class::isInstance);
    }
}
