package wainbook.engineering.flow.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.score.PairedDifference;

/**
 * How late the vehicles of a line finish together: working minutes of its last stage after the minute each is promised for, added up
 * over all that are promised, replication by replication. A finish beyond the calendar counts as its end.
 */
public final class Lateness {

    private static final double CONFIDENCE = 0.95;

    private final double[] byReplication;

    private Lateness(double[] byReplication) {
        this.byReplication = byReplication;
    }

    /** @param forecast of this line */
    public static Lateness of(Line line, Forecast forecast) {
        return of(line, forecast, counted(line));
    }

    /** The minutes in which a line's lateness is counted: those of its last stage. */
    public static WorkingTime counted(Line line) {
        return line.stages().isEmpty()
                ? line.working()
                : line.stages().get(line.stages().size() - 1).working();
    }

    /** @param time in whose minutes it is counted: where calendars differ, one for both */
    public static Lateness of(Line line, Forecast forecast, WorkingTime time) {
        List<Vehicle> vehicles = line.vehicles();
        double[] late = new double[forecast.replications()];
        IntStream.range(0, vehicles.size())
                .filter(at -> vehicles.get(at).promised().isPresent())
                .forEach(at -> {
                    double promised = time.worked(vehicles.get(at).promised().getAsDouble());
                    double[] finish = forecast.vehicles().get(at).finish().inOrder();
                    for (int i = 0; i < late.length; i++) {
                        double came = finish[finish.length == 1 ? 0 : i];
                        late[i] += Math.max(0, time.worked(came) - promised);
                    }
                });
        return new Lateness(late);
    }

    public double meanMinutes() {
        return Arrays.stream(byReplication).average().orElse(0);
    }

    /** The minutes that vanish from this one to another of the same seed, with their 95 % interval. */
    public PairedDifference vanishing(Lateness after) {
        return PairedDifference.of(after.byReplication, byReplication, CONFIDENCE);
    }
}
