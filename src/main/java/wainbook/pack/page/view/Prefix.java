package wainbook.pack.page.view;

import java.math.BigDecimal;

/** In what an instrument shows a resistance: chosen each time, never guessed. */
public enum Prefix {
    KILO("kΩ", 3),
    MEGA("MΩ", 6),
    GIGA("GΩ", 9);

    private final String sign;
    private final int power;

    Prefix(String sign, int power) {
        this.sign = sign;
        this.power = power;
    }

    String sign() {
        return sign;
    }

    public BigDecimal ohm(BigDecimal shown) {
        return new BigDecimal(shown.scaleByPowerOfTen(power).toPlainString());
    }
}
