package wainbook.station.determination;

import java.math.BigDecimal;
import java.math.MathContext;
import wainbook.engineering.Plain;

/** Values with their unit, in the prefix that reads well. */
public final class Quantities {

    private static final double KILO = 1e3;
    private static final double MEGA = 1e6;
    private static final double GIGA = 1e9;

    private Quantities() {}

    public static String ohm(double ohm) {
        if (ohm >= GIGA) {
            return text(ohm / GIGA) + " GΩ";
        }
        if (ohm >= MEGA) {
            return text(ohm / MEGA) + " MΩ";
        }
        return ohm >= KILO ? text(ohm / KILO) + " kΩ" : text(ohm) + " Ω";
    }

    public static String of(BigDecimal value, String unit) {
        return unit.equals("Ω") ? ohm(value.doubleValue()) : text(value.doubleValue()) + " " + unit;
    }

    /** Never so short that a value looks like a limit that it is not: four digits are enough for eyes, the entry has all. */
    private static String text(double value) {
        return Plain.text(new BigDecimal(value).round(new MathContext(5)).doubleValue());
    }
}
