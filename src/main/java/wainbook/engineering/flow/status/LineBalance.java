package wainbook.engineering.flow.status;

import java.util.List;

/**
 * How evenly work lies on the stations of a line.
 *
 * @param efficiency Σ load / (stations · cycle)
 * @param delay 1 − efficiency, the balance delay
 * @param idleMinutes stations · cycle − Σ load, a cycle
 * @param smoothness √Σ (greatest load − load)², 0 for perfect; from the greatest load and not from the cycle, as some texts have it
 */
public record LineBalance(double efficiency, double delay, double idleMinutes, double smoothness) {

    /**
     * @param loads minutes of work at each station, at least one
     * @param cycleMinutes cycle or takt, above 0
     */
    public static LineBalance of(List<Double> loads, double cycleMinutes) {
        double sum = loads.stream().mapToDouble(load -> load).sum();
        double most = loads.stream().mapToDouble(load -> load).max().orElseThrow();
        double squares = loads.stream()
                .mapToDouble(load -> (most - load) * (most - load))
                .sum();
        double all = loads.size() * cycleMinutes;
        return new LineBalance(sum / all, 1 - sum / all, all - sum, Math.sqrt(squares));
    }
}
