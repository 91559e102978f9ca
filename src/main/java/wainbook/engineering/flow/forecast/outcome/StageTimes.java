package wainbook.engineering.flow.forecast.outcome;

import java.util.Map;

/**
 * A vehicle at one stage, drawn from some of the replications.
 *
 * @param stage counted from 0
 * @param into when it takes a station there: 10 %, 50 % and 90 % of the draws
 * @param outOf when it leaves the stage
 * @param meanMinutes what its time from reaching the stage to leaving it goes into, in working minutes of the line
 */
public record StageTimes(int stage, Band into, Band outOf, Map<Cause, Double> meanMinutes) {

    /** In minutes since the origin. */
    public record Band(double tenth, double median, double ninetieth) {}

    public StageTimes {
        meanMinutes = Map.copyOf(meanMinutes);
    }
}
