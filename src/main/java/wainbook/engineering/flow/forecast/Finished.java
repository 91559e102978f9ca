package wainbook.engineering.flow.forecast;

import java.util.Arrays;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.score.PairedDifference;

/** How many vehicles are finished by a minute, replication by replication. */
public final class Finished {

    private static final double CONFIDENCE = 0.95;

    private final double[] byReplication;

    private Finished(double[] byReplication) {
        this.byReplication = byReplication;
    }

    public static Finished by(Forecast forecast, double minute) {
        double[] vehicles = new double[forecast.replications()];
        for (Outlook outlook : forecast.vehicles()) {
            double[] finish = outlook.finish().inOrder();
            for (int i = 0; i < vehicles.length; i++) {
                vehicles[i] += finish[finish.length == 1 ? 0 : i] <= minute ? 1 : 0;
            }
        }
        return new Finished(vehicles);
    }

    public double mean() {
        return Arrays.stream(byReplication).average().orElse(0);
    }

    /** How many more than in another forecast of the same seed, with the 95 % interval. */
    public PairedDifference moreThan(Finished before) {
        return PairedDifference.of(before.byReplication, byReplication, CONFIDENCE);
    }
}
