package wainbook.process.stream;

import java.math.BigDecimal;

/**
 * What a litre weighs.
 *
 * @param kgPerL above 0, at most 20
 * @param source where the figure comes from
 */
public record Density(BigDecimal kgPerL, String source) {

    private static final BigDecimal MOST = BigDecimal.valueOf(20);

    public Density {
        if (kgPerL.signum() <= 0 || kgPerL.compareTo(MOST) > 0) {
            throw new IllegalArgumentException(
                    "a density is above 0 and at most 20 kg per litre, not " + kgPerL.toPlainString());
        }
        if (source.isBlank() || source.length() > 200) {
            throw new IllegalArgumentException("a density has a source, in at most 200 characters");
        }
    }
}
