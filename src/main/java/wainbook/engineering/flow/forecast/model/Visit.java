package wainbook.engineering.flow.forecast.model;

/**
 * What a vehicle needs at one stage.
 *
 * @param work in minutes of the stage's working time, for a vehicle of usual pace
 * @param curingMinutes after the work, in clock time
 * @param notBeforeMinute parts are not there earlier; negative infinity where nothing is short
 * @param passing it only goes through: no work, no gate
 */
public record Visit(Minutes work, double curingMinutes, double notBeforeMinute, boolean passing) {

    public static Visit of(Minutes work) {
        return new Visit(work, 0, Double.NEGATIVE_INFINITY, false);
    }

    /** The stage is not in the vehicle's route, but the vehicle has to pass it. */
    public static Visit passingThrough() {
        return new Visit(Minutes.NONE, 0, Double.NEGATIVE_INFINITY, true);
    }

    /** The same with work that takes so many times as long. */
    public Visit working(double factor) {
        return new Visit(work.times(factor), curingMinutes, notBeforeMinute, passing);
    }

    public Visit notBefore(double minute) {
        return new Visit(work, curingMinutes, minute, passing);
    }

    public Visit withCuring(double minutes) {
        return new Visit(work, minutes, notBeforeMinute, passing);
    }
}
