package wainbook.engineering.energy.driving;

import java.util.Optional;
import wainbook.engineering.Domain;

/**
 * Packs as a voltage behind a resistance: the power at the terminals is P = U · I − R · I².
 *
 * @param openV without current
 * @param resistanceOhm of all packs together
 * @param roomKwh what they can still take at the start before they refuse what braking gives back, to within a second; no end if absent
 */
public record Battery(
        @Domain(above = 0) double openV,
        @Domain(from = 0) double resistanceOhm,
        Optional<@Domain(from = 0) Double> roomKwh) {

    public Battery(double openV, double resistanceOhm) {
        this(openV, resistanceOhm, Optional.empty());
    }

    /** @return U² / 4R, where more current gives no more power; infinite without resistance */
    public double greatestW() {
        return openV * openV / (4 * resistanceOhm);
    }

    public boolean delivers(double terminalW) {
        return 4 * resistanceOhm * terminalW <= openV * openV;
    }

    /**
     * The smaller root of P = U · I − R · I², written so that it also holds without resistance.
     *
     * @return below nought while charging
     * @throws IllegalArgumentException for more than {@link #delivers} says
     */
    public double currentA(double terminalW) {
        if (!delivers(terminalW)) {
            throw new IllegalArgumentException("no current gives " + terminalW + " W");
        }
        double root = Math.sqrt(openV * openV - 4 * resistanceOhm * terminalW);
        return 2 * terminalW / (openV + root);
    }

    /** @return turned to heat inside the packs at this current */
    public double lossW(double currentA) {
        return resistanceOhm * currentA * currentA;
    }
}
