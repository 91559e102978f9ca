package wainbook.engineering.balance;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** What ranked positional weights come to where the rules of the works happen to be kept: a start for the solver, and an answer without it. */
final class QuickStart {

    /** What the quick rule found, and the cycle that it needs. */
    static final class Start {
        private final int[] placed;
        private final long cycle;

        private Start(int[] placed, long cycle) {
            this.placed = placed;
            this.cycle = cycle;
        }

        int[] placed() {
            return placed;
        }

        long cycle() {
            return cycle;
        }
    }

    private final Work work;
    private final Ticks ticks;
    private final Kept kept;
    private final PositionalWeight rule;

    QuickStart(Work work, Ticks ticks, Precedence precedence, Kept kept) {
        this.work = work;
        this.ticks = ticks;
        this.kept = kept;
        this.rule = new PositionalWeight(ticks, precedence);
    }

    /** Under a cycle, with at most so many stations. */
    Optional<int[]> stations(long cycle, int most) {
        return rule.stations(cycle)
                .filter(placed -> PositionalWeight.count(placed) <= most)
                .filter(placed -> kept.all(placed, PositionalWeight.count(placed), cycle));
    }

    /** The least cycle at which the quick rule needs no more stations, by halving; what it says need not rise evenly. */
    Optional<Start> cycle(int stations, long bound, long step) {
        long low = bound;
        long high = everything();
        Optional<Start> best = Optional.empty();
        while (low <= high) {
            long middle = (low + high) / 2 / step * step;
            long tried = Math.max(low, middle);
            Optional<int[]> placed = rule.stations(tried)
                    .filter(one -> PositionalWeight.count(one) <= stations)
                    .filter(one -> kept.all(one, stations, tried));
            if (placed.isPresent()) {
                best = placed.map(one -> new Start(one, work.chance().isPresent() ? tried : needed(one)));
                high = tried - step;
            } else {
                low = tried + step;
            }
        }
        return best;
    }

    /** The cycle that these places need, without regard to chance. */
    private long needed(int[] placed) {
        return ticks.rowNumbers().stream()
                .mapToLong(row -> IntStream.rangeClosed(0, PositionalWeight.count(placed) - 1)
                        .mapToLong(place -> ticks.cycle(
                                row,
                                IntStream.range(0, placed.length)
                                        .filter(task -> placed[task] == place)
                                        .mapToLong(task -> ticks.rows()[row][task])
                                        .sum()))
                        .max()
                        .orElse(0))
                .max()
                .orElse(0);
    }

    /** The cycle of one station that does it all. */
    long everything() {
        long spread = work.chance()
                .map(chance -> (long) Math.ceil(
                        Chance.load(0, (double) LongStream.of(ticks.variance()).sum(), chance)))
                .orElse(0L);
        return spread
                + ticks.rowNumbers().stream()
                        .mapToLong(row -> ticks.cycle(row, ticks.sum(row)))
                        .max()
                        .orElse(0);
    }
}
