package wainbook.engineering.balance;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.status.LineBalance;

/**
 * What a search came to. Nothing here is called the best unless it is proved.
 *
 * @param placed tasks by station in an order in which they can be done; absent if none was found
 * @param loadMinutes average load of each station in a cycle: what a vehicle gets there, shared by those side by side
 * @param cycleMinutes the greatest average load
 * @param best stations or minutes, whichever was sought
 * @param lowerBound of the same
 * @param proven whether no balance is better; without a balance, whether there is none
 * @param chosen whether, among the equals, it is proved the smoothest or the one with the least change
 */
public record Found(
        Optional<List<List<String>>> placed,
        List<Double> loadMinutes,
        double cycleMinutes,
        double best,
        double lowerBound,
        boolean proven,
        boolean chosen,
        boolean exact) {

    public Found {
        loadMinutes = List.copyOf(loadMinutes);
    }

    public int count() {
        return placed.map(List::size).orElse(0);
    }

    /** (best − bound) / best, 0 where it is proved. */
    public double gap() {
        return best > 0 ? (best - lowerBound) / best : 0;
    }

    /** How evenly the loads lie, under the cycle that the greatest of them makes. Only where there is a balance. */
    public LineBalance evenness() {
        return LineBalance.of(loadMinutes, cycleMinutes);
    }
}
