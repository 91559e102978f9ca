package wainbook.engineering.energy.consumers;

/**
 * What keeps packs warm that left the depot warm. Half a kilowatt below 5 °C, as read in the tables of an open life-cycle model of buses, for
 * one of 12 m; for other vehicles the same figure, for want of a better one.
 */
public final class PackConditioning {

    private static final double COLD_C = 5;
    private static final double KW = 0.5;

    private PackConditioning() {}

    public static double kw(double outsideC) {
        return outsideC < COLD_C ? KW : 0;
    }
}
