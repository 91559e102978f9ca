package wainbook.waste.note;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A note's mass spread over what was put in, by mass. In whole grams, the largest remainders first, so that the shares add up to the
 * note exactly.
 */
public final class Apportionment {

    private static final int GRAMS = 3;

    private Apportionment() {}

    /**
     * @param putInKg not empty, none below 0, not all 0
     * @param noteKg 0 or more
     * @return as many shares, in the same order
     */
    public static List<BigDecimal> of(List<BigDecimal> putInKg, BigDecimal noteKg) {
        BigDecimal whole = putInKg.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (whole.signum() <= 0 || noteKg.signum() < 0) {
            throw new IllegalArgumentException("there is nothing to apportion " + noteKg.toPlainString() + " kg by");
        }
        BigInteger grams =
                noteKg.movePointRight(GRAMS).setScale(0, RoundingMode.HALF_UP).toBigIntegerExact();
        List<BigInteger> floors = new ArrayList<>();
        List<BigDecimal> remainders = new ArrayList<>();
        for (BigDecimal part : putInKg) {
            BigDecimal[] split = part.multiply(new BigDecimal(grams)).divideAndRemainder(whole);
            floors.add(split[0].toBigIntegerExact());
            remainders.add(split[1]);
        }
        int left = grams.subtract(floors.stream().reduce(BigInteger.ZERO, BigInteger::add))
                .intValueExact();
        IntStream.range(0, floors.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> remainders.get(i)).reversed())
                .limit(left)
                .forEach(i -> floors.set(i, floors.get(i).add(BigInteger.ONE)));
        return floors.stream().map(floor -> new BigDecimal(floor, GRAMS)).toList();
    }
}
