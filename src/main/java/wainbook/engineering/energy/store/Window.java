package wainbook.engineering.energy.store;

/**
 * What may be used of a pack: nominal · state of health · (highest − lowest state of charge − reserve) · cold.
 *
 * @param nominalKwh from the data sheet
 * @param share of it between highest and lowest state of charge, less what is kept to come home
 * @param stateOfHealth capacity now over nominal
 */
public record Window(double nominalKwh, double share, double stateOfHealth) {

    /** From memory: usable energy of a pack that is not warmed falls about half a percent a kelvin below 20 °C. */
    private static final double LOST_A_KELVIN = 0.005;

    private static final double WARM_C = 20;

    public double usableKwh() {
        return nominalKwh * stateOfHealth * share;
    }

    public double usableKwh(double packC) {
        return usableKwh() * coldShare(packC);
    }

    /** @return c = 1 − 0.005 · max(0, 20 − T): what a pack of this temperature gives of what it gives in the warmth */
    public static double coldShare(double packC) {
        return Math.max(0, 1 - LOST_A_KELVIN * Math.max(0, WARM_C - packC));
    }

    /** The fewest packs for a need; a billionth of one does not ask for another. */
    public double packsFor(double needKwh) {
        return Math.max(1, Math.ceil(needKwh / usableKwh() - 1e-9));
    }
}
