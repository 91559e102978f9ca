package wainbook.engineering.flow.forecast;

import java.util.Arrays;
import wainbook.engineering.flow.forecast.outcome.StageTimes;
import wainbook.engineering.flow.score.Quantile;

/** When vehicles take a station and leave it, kept from the first replications. */
final class Drawing {

    private final Plan plan;
    private final double[][] into;
    private final double[][] outOf;

    Drawing(Plan plan, int drawn) {
        this.plan = plan;
        this.into = new double[plan.vehicles * plan.stages][drawn];
        this.outOf = new double[plan.vehicles * plan.stages][drawn];
    }

    void keep(Run run, int replication) {
        for (int visit = 0; visit < into.length; visit++) {
            into[visit][replication] = plan.beginning(run.begun[visit]);
            outOf[visit][replication] = plan.minute(run.left[visit]);
        }
    }

    StageTimes times(int vehicle, int stage, int kept, Tally tally) {
        int visit = vehicle * plan.stages + stage;
        return new StageTimes(stage, band(into[visit], kept), band(outOf[visit], kept), tally.at(visit));
    }

    private static StageTimes.Band band(double[] draws, int kept) {
        double[] sorted = Arrays.copyOf(draws, kept);
        Arrays.sort(sorted);
        return new StageTimes.Band(
                Quantile.TYPE_7.of(sorted, 0.1), Quantile.TYPE_7.of(sorted, 0.5), Quantile.TYPE_7.of(sorted, 0.9));
    }
}
