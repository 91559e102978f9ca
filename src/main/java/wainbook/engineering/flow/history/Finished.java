package wainbook.engineering.flow.history;

/**
 * One stage finished on one vehicle.
 *
 * @param kind of vehicle
 * @param minutes of work there, in the stage's working time; held, down and blocked minutes left out; above 0
 * @param plannedMinutes of that stage for that kind, above 0
 */
public record Finished(String vehicle, String kind, String stage, double minutes, double plannedMinutes) {

    public Finished {
        if (!(minutes > 0) || !(plannedMinutes > 0)) {
            throw new IllegalArgumentException("no work takes " + minutes + " of " + plannedMinutes + " minutes");
        }
    }

    /** Logarithm of actual over planned. */
    double residual() {
        return Math.log(minutes / plannedMinutes);
    }
}
