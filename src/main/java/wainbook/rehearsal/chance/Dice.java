package wainbook.rehearsal.chance;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;

/** Chance that falls the same way for the same seed. */
public final class Dice {

    private final SplittableRandom random;

    private Dice(SplittableRandom random) {
        this.random = random;
    }

    /** Dice of their own for one thing, so that what happens to another changes nothing here. */
    public static Dice of(long seed, Object... about) {
        long mixed = seed;
        for (Object one : about) {
            // Thrown once in between, or the third vehicle of one seed would be the second of the next.
            mixed = new SplittableRandom(mixed).nextLong() + one.hashCode();
        }
        return new Dice(new SplittableRandom(mixed));
    }

    public boolean falls(double odds) {
        return random.nextDouble() < odds;
    }

    public int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    public double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** Somewhere about the middle of 0 and 1, seldom near either: the mean of three throws. */
    public double aboutTheMiddle() {
        return (random.nextDouble() + random.nextDouble() + random.nextDouble()) / 3;
    }

    /** A figure between two others, mostly about the middle, written with so many decimals. */
    public BigDecimal figure(double least, double most, int decimals) {
        return BigDecimal.valueOf(least + aboutTheMiddle() * (most - least)).setScale(decimals, RoundingMode.HALF_UP);
    }

    public <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    public String digits(int count) {
        var digits = new StringBuilder();
        for (int i = 0; i < count; i++) {
            digits.append(random.nextInt(10));
        }
        return digits.toString();
    }

    public UUID id() {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
