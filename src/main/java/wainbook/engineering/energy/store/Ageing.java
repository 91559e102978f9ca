package wainbook.engineering.energy.store;

/**
 * What packs lose with use and with time, both in straight lines: good enough for a specification (from memory). The two figures come
 * from the data sheet of the pack.
 *
 * @param lostPer1000Cycles share of the nominal capacity that goes with a thousand full cycles
 * @param lostAYear share that goes with a year, used or not
 */
public record Ageing(double lostPer1000Cycles, double lostAYear) {

    private static final double CYCLES = 1000;

    /**
     * @param cyclesAYear energy taken out of the packs in a year over their nominal energy
     * @return capacity after so many years over nominal, not below nought
     */
    public double stateOfHealth(double cyclesAYear, double years) {
        return Math.max(0, 1 - lostInAYear(cyclesAYear) * years);
    }

    /** @return years until this state of health is reached; below nought for more than 1, infinite where nothing is lost */
    public double yearsTo(double stateOfHealth, double cyclesAYear) {
        return (1 - stateOfHealth) / lostInAYear(cyclesAYear);
    }

    public double lostInAYear(double cyclesAYear) {
        return lostPer1000Cycles * cyclesAYear / CYCLES + lostAYear;
    }
}
