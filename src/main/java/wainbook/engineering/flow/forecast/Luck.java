package wainbook.engineering.flow.forecast;

import java.util.Optional;
import wainbook.engineering.flow.forecast.model.Appointment;
import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.simulation.Draws;

/** What is drawn for a vehicle as a whole, once in each replication: its pace, the end of its hold, its coming out of a bay. */
final class Luck {

    static final int WORK = 1;
    static final int SIGNATURE = 2;
    static final int REFUSAL = 3;
    /** And all numbers above, one for each time the gate is refused. */
    static final int AGAIN = 4;

    private static final int PACE = 1;
    private static final int RELEASE = 2;
    private static final int BAY = 3;
    private static final int STEPS = 1024;

    final long key;
    final Optional<Hold> hold;
    final boolean stopsWork;
    private final int[] booked;
    private final double[] bookedMinute;
    private final Lognormal pace;
    private final double[] conditioned;
    private final Minutes repair;
    private final double repaired;

    private Luck(Vehicle vehicle, double[] conditioned) {
        this.key = Plan.key(vehicle.name());
        this.hold = vehicle.hold();
        this.stopsWork = hold.isPresent() && hold.get().stopsWork();
        this.booked = vehicle.bookings().keySet().stream()
                .mapToInt(one -> one)
                .sorted()
                .toArray();
        this.bookedMinute = new double[booked.length];
        for (int i = 0; i < booked.length; i++) {
            bookedMinute[i] = vehicle.bookings().get(booked[i]);
        }
        this.pace = new Lognormal(vehicle.pace().median(), vehicle.pace().sigma());
        this.conditioned = conditioned;
        boolean inBay = vehicle.whereabouts() instanceof Whereabouts.InBay;
        this.repair = inBay ? ((Whereabouts.InBay) vehicle.whereabouts()).repair() : Minutes.NONE;
        this.repaired = inBay ? ((Whereabouts.InBay) vehicle.whereabouts()).spentMinutes() : 0;
    }

    static Luck of(Vehicle vehicle, Start start) {
        boolean told = start.kind() == Start.Kind.AT_WORK && vehicle.pace().sigma() > 0 && start.elapsed() > 0;
        Minutes work = told ? vehicle.visits().get(start.stage()).work() : Minutes.NONE;
        return new Luck(vehicle, told ? conditioned(vehicle.pace(), work, start.elapsed()) : new double[0]);
    }

    double pace(long own) {
        if (conditioned.length > 0) {
            return conditioned[(int) (Draws.uniform(Draws.key(own, PACE)) * conditioned.length)];
        }
        return pace.sigma() == 0 ? pace.medianMinutes() : pace.at(Draws.uniform(Draws.key(own, PACE)));
    }

    /** Negative infinity without a hold. */
    double heldUntil(long own, WorkingTime lineTime) {
        if (hold.isEmpty()) {
            return Double.NEGATIVE_INFINITY;
        }
        if (hold.get().release() instanceof Hold.At at) {
            return at.minute();
        }
        var before = (Hold.AsBefore) hold.get().release();
        return lineTime.add(0, before.length().left(before.openMinutes(), Draws.uniform(Draws.key(own, RELEASE))));
    }

    double outOfBay(long own, WorkingTime lineTime) {
        return lineTime.add(0, repair.left(repaired, Draws.uniform(Draws.key(own, BAY))));
    }

    /**
     * The minute at which an appointment is over and passed.
     *
     * @param key of the number that says how often it fails
     */
    double kept(int at, double ready, Appointment appointment, long key) {
        double ends = begins(at, ready, appointment) + appointment.lengthMinutes();
        if (appointment.failure() > 0) {
            double u = Draws.uniform(key);
            int times = 1 - u > appointment.failure() ? 0 : (int) (Math.log1p(-u) / Math.log(appointment.failure()));
            for (int time = 0; time < times; time++) {
                double earliest = ends + appointment.rebookingMinutes();
                ends = appointment.openings().fitting(earliest, appointment.lengthMinutes())
                        + appointment.lengthMinutes();
            }
        }
        return ends;
    }

    private double begins(int at, double ready, Appointment appointment) {
        for (int i = 0; i < booked.length; i++) {
            if (booked[i] == at && bookedMinute[i] >= ready) {
                return bookedMinute[i];
            }
        }
        return appointment.openings().fitting(ready + appointment.noticeMinutes(), appointment.lengthMinutes());
    }

    /**
     * A job that has gone on for so long tells that its vehicle is rather a slow one: each pace counts by the chance that the work takes
     * longer than it already has.
     */
    private static double[] conditioned(Pace pace, Minutes work, double elapsed) {
        var law = new Lognormal(pace.median(), pace.sigma());
        double[] paces = new double[STEPS];
        double[] reached = new double[STEPS];
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            paces[i] = law.at((i + 0.5) / STEPS);
            sum += work.beyond(elapsed / paces[i]);
            reached[i] = sum;
        }
        if (sum <= 0) {
            return paces;
        }
        double[] drawn = new double[STEPS];
        int at = 0;
        for (int i = 0; i < STEPS; i++) {
            double wanted = (i + 0.5) / STEPS * sum;
            while (at < STEPS - 1 && reached[at] < wanted) {
                at++;
            }
            drawn[i] = paces[at];
        }
        return drawn;
    }
}
