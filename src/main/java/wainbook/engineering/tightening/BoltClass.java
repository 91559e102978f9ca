package wainbook.engineering.tightening;

import java.util.Arrays;
import java.util.Optional;

/**
 * Property class of a steel bolt, as on its head: least 0.2 % proof strength Rp0.2 and proof stress Sp (ISO 898-1, from
 * memory; the proof loads of two fastener suppliers' tables agree).
 */
public enum BoltClass {
    C8_8("8.8", 640, 580, 660, 600),
    C10_9("10.9", 940, 830, 940, 830),
    C12_9("12.9", 1100, 970, 1100, 970);

    private static final double THIN_UP_TO_MM = 16;

    private final String mark;
    private final double thinYieldMPa;
    private final double thinProofMPa;
    private final double thickYieldMPa;
    private final double thickProofMPa;

    BoltClass(String mark, double thinYieldMPa, double thinProofMPa, double thickYieldMPa, double thickProofMPa) {
        this.mark = mark;
        this.thinYieldMPa = thinYieldMPa;
        this.thinProofMPa = thinProofMPa;
        this.thickYieldMPa = thickYieldMPa;
        this.thickProofMPa = thickProofMPa;
    }

    public static Optional<BoltClass> of(String mark) {
        return Arrays.stream(values()).filter(one -> one.mark.equals(mark)).findFirst();
    }

    public String mark() {
        return mark;
    }

    public double yieldMPa(double diameterMm) {
        return diameterMm <= THIN_UP_TO_MM ? thinYieldMPa : thickYieldMPa;
    }

    public double proofMPa(double diameterMm) {
        return diameterMm <= THIN_UP_TO_MM ? thinProofMPa : thickProofMPa;
    }

    @Override
    public String toString() {
        return mark;
    }
}
