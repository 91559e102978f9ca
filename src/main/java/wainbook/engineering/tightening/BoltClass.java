package wainbook.engineering.tightening;

import java.util.Arrays;
import java.util.Optional;

/** Strength of a steel bolt by the mark on its head: least 0.2 % proof stress Rp0.2 (ISO 898-1, values from memory). */
public enum BoltClass {
    C8_8("8.8", 640, 660),
    C10_9("10.9", 940, 940),
    C12_9("12.9", 1100, 1100);

    private static final double THIN_UP_TO_MM = 16;

    private final String mark;
    private final double thinMPa;
    private final double thickMPa;

    BoltClass(String mark, double thinMPa, double thickMPa) {
        this.mark = mark;
        this.thinMPa = thinMPa;
        this.thickMPa = thickMPa;
    }

    public static Optional<BoltClass> of(String mark) {
        return Arrays.stream(values()).filter(one -> one.mark.equals(mark)).findFirst();
    }

    public String mark() {
        return mark;
    }

    public double yieldMPa(double diameterMm) {
        return diameterMm <= THIN_UP_TO_MM ? thinMPa : thickMPa;
    }
}
