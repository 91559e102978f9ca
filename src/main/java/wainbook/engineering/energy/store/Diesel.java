package wainbook.engineering.energy.store;

/**
 * What a litre of diesel holds, and what an operator’s fuel record says of the electric need. Density, heating value and carbon dioxide
 * as in the fuel table of the European Union’s consumption method, read in a public copy.
 */
public final class Diesel {

    private static final double KG_A_LITRE = 0.836;
    private static final double MJ_A_KG = 42.7;
    private static final double MJ_A_KWH = 3.6;
    private static final double CO2_A_KG = 3.13;

    private Diesel() {}

    public static double kwhPerLitre() {
        return KG_A_LITRE * MJ_A_KG / MJ_A_KWH;
    }

    /** @return at the vehicle, making and bringing of the fuel left out */
    public static double co2KgPerLitre() {
        return KG_A_LITRE * CO2_A_KG;
    }

    public static double fuelKwhPerKm(double litresPer100Km) {
        return litresPer100Km / 100 * kwhPerLitre();
    }

    public static double co2GramsPerKm(double litresPer100Km) {
        return litresPer100Km / 100 * co2KgPerLitre() * 1000;
    }
}
