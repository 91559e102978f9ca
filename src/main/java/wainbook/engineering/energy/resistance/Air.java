package wainbook.engineering.energy.resistance;

/** Dry air as an ideal gas: ρ = p / (287.05 T). From memory; any textbook. */
public final class Air {

    public static final double STANDARD_PA = 101_325;

    private static final double GAS_CONSTANT = 287.05;
    private static final double FREEZING_K = 273.15;

    private Air() {}

    /** @return kg/m³ at this temperature in °C and this pressure in Pa */
    public static double densityKgM3(double celsius, double pressurePa) {
        return pressurePa / (GAS_CONSTANT * (celsius + FREEZING_K));
    }
}
