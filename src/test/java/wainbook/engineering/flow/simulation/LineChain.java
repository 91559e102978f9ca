package wainbook.engineering.flow.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The chain of a line of single stations with Erlang work, blocking after service, never without a vehicle in front. It knows
 * nothing of the recursion: it moves from state to state.
 */
public final class LineChain {

    /**
     * What each station does, then how many wait in front of each but the first.
     *
     * @param cells 0 without a vehicle, 1 to k in that phase, k + 1 blocked
     */
    public record State(List<Integer> cells) {
        public State {
            cells = List.copyOf(cells);
        }
    }

    private final double[] rates;
    private final int[] rooms;
    private final int phases;

    private LineChain(double[] rates, int[] rooms, int phases) {
        this.rates = rates.clone();
        this.rooms = rooms.clone();
        this.phases = phases;
    }

    /**
     * @param rates pieces of work a minute at each station
     * @param phases 1 for exponential work
     */
    public static Chain<State> of(double[] rates, int[] rooms, int phases) {
        var line = new LineChain(rates, rooms, phases);
        int[] first = new int[2 * rates.length - 1];
        first[0] = 1;
        return new Chain<>(line.state(first), line::on);
    }

    public static double throughput(double[] rates, int[] rooms, int phases) {
        return of(rates, rooms, phases).leavings();
    }

    /** All alike with a mean of 1, and as many places between each pair. */
    public static double throughput(int stations, int room, int phases) {
        double[] rates = new double[stations];
        Arrays.fill(rates, 1);
        int[] rooms = new int[stations - 1];
        Arrays.fill(rooms, room);
        return throughput(rates, rooms, phases);
    }

    private List<Chain.Step<State>> on(State state) {
        var steps = new ArrayList<Chain.Step<State>>();
        for (int station = 0; station < rates.length; station++) {
            int phase = state.cells().get(station);
            if (phase >= 1 && phase <= phases) {
                int[] cells = state.cells().stream().mapToInt(cell -> cell).toArray();
                boolean done = phase == phases;
                cells[station] = phase + 1;
                int leaves = done && station == rates.length - 1 ? 1 : 0;
                if (done) {
                    release(cells, station);
                }
                steps.add(new Chain.Step<>(state(cells), rates[station] * phases, leaves));
            }
        }
        return steps;
    }

    /** Lets the vehicle of a station that is done go, if it can, and whatever can move up behind it. */
    private void release(int[] cells, int station) {
        if (station < rates.length - 1) {
            int queue = rates.length + station;
            if (cells[station + 1] == 0) {
                cells[station + 1] = 1;
            } else if (cells[queue] < rooms[station]) {
                cells[queue]++;
            } else {
                return;
            }
        }
        refill(cells, station);
    }

    private void refill(int[] cells, int station) {
        if (station == 0) {
            cells[0] = 1;
            return;
        }
        int queue = rates.length + station - 1;
        cells[station] = 0;
        if (cells[queue] > 0) {
            cells[queue]--;
            cells[station] = 1;
        }
        if (cells[station - 1] == phases + 1) {
            release(cells, station - 1);
        }
    }

    private State state(int[] cells) {
        return new State(Arrays.stream(cells).boxed().toList());
    }
}
