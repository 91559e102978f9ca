package wainbook.engineering.electrical;

/**
 * A copper conductor: R' = ρ (1 + α (T − 20)) / A, with ρ = 17.24 nΩ·m and α = 0.00393 a kelvin (annealed copper, from memory; any handbook).
 *
 * @param areaMm2 of its cross section
 */
public record CopperCable(double areaMm2) {

    private static final double RESISTIVITY_OHM_M = 17.24e-9;
    private static final double RISE_A_KELVIN = 0.00393;
    private static final double MEASURED_AT_C = 20;

    /** @return Ω/m at this temperature of the copper */
    public double ohmPerMetre(double celsius) {
        return RESISTIVITY_OHM_M * (1 + RISE_A_KELVIN * (celsius - MEASURED_AT_C)) / (areaMm2 * 1e-6);
    }

    /** @return heat in each metre at this steady current */
    public double lossWPerMetre(double currentA, double celsius) {
        return currentA * currentA * ohmPerMetre(celsius);
    }

    /** @return the current to size for: the highest power at the lowest voltage */
    public static double currentA(double highestW, double lowestV) {
        return highestW / lowestV;
    }
}
