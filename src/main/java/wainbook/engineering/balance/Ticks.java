package wainbook.engineering.balance;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * A work in whole numbers. A tick is the smallest decimal place that is used, at most a millionth of a minute, so that times with
 * up to six places are exact. Each row of times is a limit of its own: its load at a station is at most {@code times · c} ticks,
 * where c is the cycle. The first row is the average vehicle; the others are each kind, where kinds have a limit.
 */
final class Ticks {

    private static final int MOST_PLACES = 6;
    /** Averages over kinds have more places than what they are made of. */
    private static final int PLACES_OF_AVERAGES = 2;

    private static final int PLACES_OF_SHARES = 4;
    private static final int THOUSAND = 1000;

    private final long[][] rows;
    private final long[] times;
    private final long[] variance;
    private final BigDecimal tick;
    private final boolean exact;

    private Ticks(long[][] rows, long[] times, long[] variance, BigDecimal tick, boolean exact) {
        this.rows = rows;
        this.times = times;
        this.variance = variance;
        this.tick = tick;
        this.exact = exact;
    }

    static Ticks of(Work work, DoubleStream others) {
        boolean several = work.kinds().size() > 1;
        int needed = DoubleStream.concat(all(work), others)
                .mapToInt(minutes -> decimal(minutes).stripTrailingZeros().scale())
                .max()
                .orElse(0);
        int places = Math.min(MOST_PLACES, Math.max(needed, several ? PLACES_OF_AVERAGES : 0));
        long[][] kinds = new long[work.kinds().size()][];
        for (int kind = 0; kind < kinds.length; kind++) {
            int one = kind;
            kinds[kind] = work.tasks().stream()
                    .mapToLong(task -> ticks(task.minutes().get(one), places, RoundingMode.HALF_UP))
                    .toArray();
        }
        long[] variance = work.tasks().stream()
                .mapToLong(task -> ticks(task.spreadMinutes(), places, RoundingMode.UP))
                .map(spread -> spread * spread)
                .toArray();
        BigDecimal tick = BigDecimal.ONE.movePointLeft(Math.max(0, places));
        boolean exact = needed <= MOST_PLACES;
        return several
                ? averaged(work, kinds, variance, tick, exact)
                : new Ticks(kinds, new long[] {1}, variance, tick, exact);
    }

    private static Ticks averaged(Work work, long[][] kinds, long[] variance, BigDecimal tick, boolean exact) {
        long[] shares = work.kinds().stream()
                .mapToLong(kind -> ticks(kind.share(), PLACES_OF_SHARES, RoundingMode.HALF_UP))
                .toArray();
        long common = LongStream.of(shares).reduce(0, Ticks::common);
        long[] parts =
                LongStream.of(shares).map(share -> share / Math.max(1, common)).toArray();
        long[] average = new long[work.tasks().size()];
        for (int kind = 0; kind < parts.length; kind++) {
            for (int task = 0; task < average.length; task++) {
                average[task] += parts[kind] * kinds[kind][task];
            }
        }
        long whole = LongStream.of(parts).sum();
        if (work.overrun().isEmpty()) {
            return new Ticks(new long[][] {average}, new long[] {whole}, variance, tick, exact);
        }
        long over = THOUSAND + (long) Math.floor(work.overrun().get() * THOUSAND + 1e-9);
        long[][] rows = Stream.concat(
                        Stream.of(average),
                        Stream.of(kinds)
                                .map(row -> LongStream.of(row)
                                        .map(time -> time * THOUSAND)
                                        .toArray()))
                .toArray(long[][]::new);
        long[] times = LongStream.concat(
                        LongStream.of(whole), LongStream.generate(() -> over).limit(kinds.length))
                .toArray();
        return new Ticks(rows, times, variance, tick, exact);
    }

    private static DoubleStream all(Work work) {
        return work.tasks().stream()
                .flatMapToDouble(task -> DoubleStream.concat(
                        task.minutes().stream().mapToDouble(Double::doubleValue),
                        DoubleStream.of(task.spreadMinutes())));
    }

    private static BigDecimal decimal(double minutes) {
        return BigDecimal.valueOf(minutes);
    }

    private static long ticks(double minutes, int places, RoundingMode rounding) {
        return decimal(minutes)
                .setScale(Math.max(0, places), rounding)
                .movePointRight(Math.max(0, places))
                .longValueExact();
    }

    private static long common(long one, long other) {
        return other == 0 ? one : common(other, one % other);
    }

    long[][] rows() {
        return rows;
    }

    long[] times() {
        return times;
    }

    /** Of each task in ticks², rounded up. */
    long[] variance() {
        return variance;
    }

    /** Whether no time had to be rounded. */
    boolean exact() {
        return exact;
    }

    int size() {
        return variance.length;
    }

    /** The ticks of a limit that may not be passed. */
    long under(double minutes) {
        return decimal(minutes).divide(tick, 0, RoundingMode.FLOOR).longValueExact();
    }

    double minutes(long ticks) {
        return tick.multiply(BigDecimal.valueOf(ticks)).doubleValue();
    }

    /** The average load in minutes. */
    double averageMinutes(long load) {
        return tick.multiply(BigDecimal.valueOf(load)).doubleValue() / times[0];
    }

    long sum(int row) {
        return LongStream.of(rows[row]).sum();
    }

    /** The cycle that these loads of a row need, in ticks. */
    long cycle(int row, long load) {
        return -Math.floorDiv(-load, times[row]);
    }

    /** The greatest time that divides all of the only row: cycles are its multiples. */
    long step() {
        return rows.length == 1 && times[0] == 1
                ? Math.max(1, LongStream.of(rows[0]).reduce(0, Ticks::common))
                : 1;
    }

    List<Integer> rowNumbers() {
        return IntStream.range(0, rows.length).boxed().toList();
    }
}
