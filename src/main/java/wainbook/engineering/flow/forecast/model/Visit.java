package wainbook.engineering.flow.forecast.model;

/**
 * What a vehicle needs at one stage.
 *
 * @param work in minutes of the stage's working time, for a vehicle of usual pace
 * @param curingMinutes after the work, in clock time
 * @param notBeforeMinute parts are not there earlier; negative infinity where nothing is short
 * @param curedMinute what cures already is not done earlier, while work goes on; negative infinity where nothing cures yet
 * @param passing it only goes through: no work, no gate
 */
public record Visit(Minutes work, double curingMinutes, double notBeforeMinute, double curedMinute, boolean passing) {

    private static final double AT_ANY_TIME = Double.NEGATIVE_INFINITY;

    public static Visit of(Minutes work) {
        return new Visit(work, 0, AT_ANY_TIME, AT_ANY_TIME, false);
    }

    /** The stage is not in the vehicle's route, but the vehicle has to pass it. */
    public static Visit passingThrough() {
        return new Visit(Minutes.NONE, 0, AT_ANY_TIME, AT_ANY_TIME, true);
    }

    /** The same with work that takes so many times as long. */
    public Visit working(double factor) {
        return new Visit(work.times(factor), curingMinutes, notBeforeMinute, curedMinute, passing);
    }

    public Visit notBefore(double minute) {
        return new Visit(work, curingMinutes, minute, curedMinute, passing);
    }

    public Visit withCuring(double minutes) {
        return new Visit(work, minutes, notBeforeMinute, curedMinute, passing);
    }

    public Visit cured(double minute) {
        return new Visit(work, curingMinutes, notBeforeMinute, minute, passing);
    }

    /** Nothing but work. */
    public boolean plain() {
        return !passing && curingMinutes == 0 && notBeforeMinute == AT_ANY_TIME && curedMinute == AT_ANY_TIME;
    }
}
