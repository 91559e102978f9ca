package wainbook.line.forecast;

import java.util.Locale;
import wainbook.page.Words;

/** Odds as a reader sees them: never 0 or 100 %, since draws make nothing certain. */
public final class OddsInWords {

    private static final double LEAST = 0.001;
    private static final double FINE = 0.01;

    private OddsInWords() {}

    /** @param share from 0 to 1 */
    public static String of(double share) {
        if (share < LEAST) {
            return Words.of("line.forecastBelow", percent(LEAST, 1));
        }
        if (share > 1 - LEAST) {
            return Words.of("line.forecastAbove", percent(1 - LEAST, 1));
        }
        return Words.of("line.forecastPercent", percent(share, share < FINE || share > 1 - FINE ? 1 : 0));
    }

    private static String percent(double share, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", 100 * share);
    }
}
