package wainbook.engineering.flow.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A Markov chain in continuous time, solved exactly: the long-run shares of its states, and how often something leaves. */
public final class Chain<S> {

    /**
     * One way on from a state.
     *
     * @param leaves how many vehicles leave the line with it
     */
    public record Step<S>(S to, double rate, int leaves) {}

    private static final double SETTLED = 1e-14;
    private static final int MOST_ROUNDS = 200_000;

    private final Map<S, Integer> numbers = new HashMap<>();
    private final List<S> states = new ArrayList<>();
    private final List<List<Step<S>>> ways = new ArrayList<>();
    private final double[] shares;

    /** Every state that can be reached from this one. */
    public Chain(S first, Function<S, List<Step<S>>> on) {
        number(first);
        for (int i = 0; i < states.size(); i++) {
            List<Step<S>> steps = on.apply(states.get(i));
            ways.add(steps);
            steps.forEach(step -> number(step.to()));
        }
        shares = solved();
    }

    public int states() {
        return states.size();
    }

    public double share(S state) {
        return shares[numbers.get(state)];
    }

    public List<S> all() {
        return List.copyOf(states);
    }

    public double leavings() {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            for (Step<S> step : ways.get(i)) {
                sum += shares[i] * step.rate() * step.leaves();
            }
        }
        return sum;
    }

    private void number(S state) {
        if (numbers.putIfAbsent(state, states.size()) == null) {
            states.add(state);
        }
    }

    /** Gauss and Seidel's rounds over the balance of each state: what flows out of it flows in. */
    private double[] solved() {
        int n = states.size();
        double[] out = new double[n];
        int[] count = new int[n];
        for (int i = 0; i < n; i++) {
            for (Step<S> step : ways.get(i)) {
                out[i] += step.rate();
                count[numbers.get(step.to())]++;
            }
        }
        int[][] from = new int[n][];
        double[][] rate = new double[n][];
        for (int i = 0; i < n; i++) {
            from[i] = new int[count[i]];
            rate[i] = new double[count[i]];
        }
        for (int i = 0; i < n; i++) {
            for (Step<S> step : ways.get(i)) {
                int to = numbers.get(step.to());
                count[to]--;
                from[to][count[to]] = i;
                rate[to][count[to]] = step.rate();
            }
        }
        double[] share = new double[n];
        Arrays.fill(share, 1.0 / n);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double moved = 0;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                double in = 0;
                for (int k = 0; k < from[i].length; k++) {
                    in += share[from[i][k]] * rate[i][k];
                }
                double next = in / out[i];
                moved = Math.max(moved, Math.abs(next - share[i]) / Math.max(next, 1e-300));
                share[i] = next;
                sum += next;
            }
            for (int i = 0; i < n; i++) {
                share[i] /= sum;
            }
            if (moved < SETTLED * 100) {
                return share;
            }
        }
        throw new AssertionError("the chain did not settle");
    }
}
