package wainbook.process.calibration;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * A value that a calibration of the driving behaviour sets. The bounds guard against slips of typing and against nothing else: what
 * a road, a licence or a type approval allows is for local rules to say, and no limit of any law stands here.
 */
public enum Setting {
    ROAD_SPEED_LIMIT("set road speed limit", "km/h", "5", "150"),
    ACCELERATION_LIMIT("set acceleration limit", "m/s²", "0.1", "3"),
    LIFT_OFF_REGENERATION("set lift-off regeneration", "m/s²", "0", "3"),
    BRAKE_REGENERATION_SHARE("set braking share of regeneration", "%", "0", "100"),
    CREEP_SPEED("set creep speed", "km/h", "0", "15"),
    REVERSE_SPEED("set reverse speed", "km/h", "1", "30");

    private final String quantity;
    private final String unit;
    private final BigDecimal least;
    private final BigDecimal most;

    Setting(String quantity, String unit, String least, String most) {
        this.quantity = quantity;
        this.unit = unit;
        this.least = new BigDecimal(least);
        this.most = new BigDecimal(most);
    }

    /** What a check item calls it, as its quantity or the head of a column: by this the value that was read is found again. */
    public String quantity() {
        return quantity;
    }

    /** What it sets, within a sentence. */
    public String thing() {
        return quantity.substring("set ".length());
    }

    public String unit() {
        return unit;
    }

    public BigDecimal least() {
        return least;
    }

    public BigDecimal most() {
        return most;
    }

    public boolean plausible(BigDecimal value) {
        return value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
    }

    /** The setting that a check item asks to be read; another unit is another quantity. */
    public static Optional<Setting> asked(String quantity, String unit) {
        return Arrays.stream(values())
                .filter(setting -> setting.quantity.equals(quantity) && setting.unit.equals(unit))
                .findFirst();
    }
}
