package wainbook.engineering.balance;

import java.util.Arrays;
import java.util.stream.LongStream;

/**
 * What no balance can be below. For stations under a cycle c: LB1 = ⌈Σt / c⌉; LB2 counts tasks above c/2, and half of those that
 * are c/2; LB3 the same in thirds (1 above 2c/3, 2/3 at it, 1/2 between, 1/3 at c/3). For the cycle of m stations: the greatest
 * task, ⌈Σt / m⌉, and for k = 1, 2, … the k + 1 tasks that end at the (km + 1)th when sorted down. A. Scholl, Balancing and
 * Sequencing of Assembly Lines, 1999, from memory; the numbers of the tests are computed.
 */
public final class Bounds {

    private static final long WHOLE = 6;
    private static final long TWO_THIRDS = 4;
    private static final long HALF = 3;
    private static final long THIRD = 2;

    private Bounds() {}

    /** LB1. */
    public static long byWork(long[] times, long cycle) {
        return up(LongStream.of(times).sum(), cycle);
    }

    /** LB2. */
    public static long byHalves(long[] times, long cycle) {
        return up(
                LongStream.of(times)
                        .map(time -> Long.signum(2 * time - cycle) + 1L)
                        .sum(),
                2);
    }

    /** LB3. */
    public static long byThirds(long[] times, long cycle) {
        return up(LongStream.of(times).map(time -> sixths(3 * time, cycle)).sum(), WHOLE);
    }

    private static long sixths(long thrice, long cycle) {
        if (thrice > 2 * cycle) {
            return WHOLE;
        }
        if (thrice == 2 * cycle) {
            return TWO_THIRDS;
        }
        if (thrice > cycle) {
            return HALF;
        }
        return thrice == cycle ? THIRD : 0;
    }

    /** The least number of stations under a cycle by all three. */
    public static long stations(long[] times, long cycle) {
        return Math.max(byWork(times, cycle), Math.max(byHalves(times, cycle), byThirds(times, cycle)));
    }

    /** The least cycle for a number of stations. */
    public static long cycle(long[] times, int stations) {
        long[] down = LongStream.of(times)
                .map(time -> -time)
                .sorted()
                .map(time -> -time)
                .toArray();
        long bound = Math.max(down[0], up(LongStream.of(times).sum(), stations));
        for (int k = 1; (long) k * stations < down.length; k++) {
            int last = k * stations;
            bound = Math.max(bound, Arrays.stream(down, last - k, last + 1).sum());
        }
        return bound;
    }

    /** For a work with kinds, crews and stations side by side, where each row has a limit of its own and c is in ticks. */
    static long stations(Work work, Ticks ticks, long cycle) {
        int capacity = work.mostCapacity();
        return ticks.rowNumbers().stream()
                .mapToLong(row -> {
                    long limit = ticks.times()[row] * cycle;
                    return capacity == 1
                            ? stations(ticks.rows()[row], limit)
                            : byWork(ticks.rows()[row], limit * capacity);
                })
                .max()
                .orElse(1);
    }

    static long cycle(Work work, Ticks ticks, int stations) {
        return ticks.rowNumbers().stream()
                .mapToLong(row -> {
                    long greatest = LongStream.of(ticks.rows()[row]).max().orElse(0);
                    long load = work.mostCapacity() == 1
                            ? cycle(ticks.rows()[row], stations)
                            : Math.max(up(greatest, work.mostSides()), up(ticks.sum(row), work.capacities(stations)));
                    return ticks.cycle(row, load);
                })
                .max()
                .orElse(0);
    }

    static long up(long load, long by) {
        return -Math.floorDiv(-load, by);
    }
}
