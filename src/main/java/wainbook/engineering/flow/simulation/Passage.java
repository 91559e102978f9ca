package wainbook.engineering.flow.simulation;

/**
 * Vehicles in their order through stations in series with places between them, blocking after service: a vehicle that is done
 * keeps its station until there is a place ahead.
 *
 * <p>For vehicle n at stage i with m servers and b places behind it: begun = max(arrived, left(i, n − m)), done = begun + work,
 * left = max(done, left(i, n − 1), left(i + 1, n − b − m′)). Max-plus linear, so no longer work ever lets anything leave earlier,
 * and no further place later.
 */
public final class Passage {

    private final int[] servers;
    private final int[] rooms;
    private final double[][] leavings;
    private final double[] arrived;
    private final double[] begun;
    private final double[] done;
    private final double[] left;
    private int vehicles;

    /**
     * @param servers parallel stations at each stage, at least 1
     * @param rooms places between one stage and the next, one fewer
     */
    public Passage(int[] servers, int[] rooms) {
        int stages = servers.length;
        this.servers = servers.clone();
        this.rooms = rooms.clone();
        this.arrived = new double[stages];
        this.begun = new double[stages];
        this.done = new double[stages];
        this.left = new double[stages];
        this.leavings = new double[stages][];
        for (int stage = 0; stage < stages; stage++) {
            leavings[stage] = new double[servers[stage] + (stage == 0 ? 0 : rooms[stage - 1]) + 1];
        }
    }

    /**
     * Sends the next vehicle through.
     *
     * @param work minutes at each stage
     */
    public void next(double releasedAt, double[] work) {
        vehicles++;
        int last = work.length - 1;
        double here = releasedAt;
        for (int stage = 0; stage <= last; stage++) {
            arrived[stage] = here;
            begun[stage] = Math.max(here, leaving(stage, servers[stage]));
            done[stage] = begun[stage] + work[stage];
            here = Math.max(done[stage], leaving(stage, 1));
            if (stage < last) {
                here = Math.max(here, leaving(stage + 1, rooms[stage] + servers[stage + 1]));
            }
            left[stage] = here;
        }
        for (int stage = 0; stage <= last; stage++) {
            leavings[stage][vehicles % leavings[stage].length] = left[stage];
        }
    }

    /** When the vehicle so many before the present one left the stage; before all time if there was none. */
    private double leaving(int stage, int before) {
        int vehicle = vehicles - before;
        return vehicle <= 0 ? Double.NEGATIVE_INFINITY : leavings[stage][vehicle % leavings[stage].length];
    }

    public double arrived(int stage) {
        return arrived[stage];
    }

    public double begun(int stage) {
        return begun[stage];
    }

    public double done(int stage) {
        return done[stage];
    }

    public double left(int stage) {
        return left[stage];
    }

    /** Minutes that the station the present vehicle took had been free before it came, from minute 0 on. */
    double starved(int stage) {
        return Math.max(0, arrived[stage] - Math.max(0, leaving(stage, servers[stage])));
    }

    /** Minutes that the present vehicle was done while the one ahead was still at a station beside. */
    double outOfTurn(int stage) {
        return Math.max(0, leaving(stage, 1) - done[stage]);
    }

    /** Minutes that it was done and in turn, with no place ahead. */
    double blocked(int stage) {
        return left[stage] - Math.max(done[stage], leaving(stage, 1));
    }
}
