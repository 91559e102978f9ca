package wainbook.line.balance.content;

/**
 * How long a kind of vehicle takes at a stage against its plan.
 *
 * @param factor median of recorded over planned minutes; 1 where the plan stands
 * @param records that it rests on, or that there are where they are too few
 */
public record Pace(String stage, String kind, Ground ground, double factor, int records) {

    private static final double TENTH = 10;

    /** Whose stays it comes from. */
    public enum Ground {
        /** The kind's own at the stage. */
        KIND,
        /** All kinds' at the stage. */
        STAGE,
        /** None: the planned minutes stand. */
        PLANNED
    }

    /** To a tenth of a minute, and not less than that: what has to be done takes time. */
    double minutes(double planned) {
        return ground == Ground.PLANNED || planned == 0
                ? planned
                : Math.max(1, Math.round(planned * factor * TENTH)) / TENTH;
    }
}
