package wainbook.order.duty;

/**
 * A kind of way with what an operator cannot know of it. An engineer’s estimates from worked examples, common practice, no source.
 *
 */
public enum Way {
    YARD(28, 0.08, 22),
    TOWN(45, 0.15, 38),
    COUNTRY(65, 0.22, 62),
    MOTORWAY(84, 0.30, 81);

    private final double stopKmh;
    private final double lostShare;
    private final double steadyKmh;

    Way(double stopKmh, double lostShare, double steadyKmh) {
        this.stopKmh = stopKmh;
        this.lostShare = lostShare;
        this.steadyKmh = steadyKmh;
    }

    /** @return speed before a stop */
    public double stopKmh() {
        return stopKmh;
    }

    /** @return of the kinetic energy that rolling and air take while slowing down */
    public double lostShare() {
        return lostShare;
    }

    /** @return steady speed with as much air drag */
    public double steadyKmh() {
        return steadyKmh;
    }
}
