package wainbook.pack.watch;

import java.math.BigDecimal;
import java.time.Instant;

/** One reading of a watched pack, both in °C: at its warmest place, and of the air around it. */
public record Temperatures(Instant at, BigDecimal packC, BigDecimal ambientC) {

    /** How much warmer it is than the air, in kelvin. */
    BigDecimal aboveAirK() {
        return packC.subtract(ambientC);
    }
}
