package wainbook.engineering.tightening;

/** A metric thread: d2 = d − 0.649519 P, d3 = d − 1.226869 P (ISO 724, from memory). */
record IsoThread(double diameterMm, double pitchMm) {

    static final double MINOR_DEPTH = 1.226869;
    private static final double PITCH_DEPTH = 0.649519;

    double pitchDiameterMm() {
        return diameterMm - PITCH_DEPTH * pitchMm;
    }

    double minorDiameterMm() {
        return diameterMm - MINOR_DEPTH * pitchMm;
    }

    double stressAreaMm2() {
        return Math.PI / 4 * meanMm() * meanMm();
    }

    /** Torque per force that pitch and thread friction take, friction under the head not counted. */
    double armMm(double threadFriction) {
        return 0.16 * pitchMm + 0.58 * pitchDiameterMm() * threadFriction;
    }

    /** By how much torsion while tightening raises the stress above that of the pull alone. */
    double torsion(double threadFriction) {
        double shear = 1.5
                * (pitchDiameterMm() / meanMm())
                * (pitchMm / (Math.PI * pitchDiameterMm()) + 1.155 * threadFriction);
        return Math.sqrt(1 + 3 * shear * shear);
    }

    private double meanMm() {
        return (pitchDiameterMm() + minorDiameterMm()) / 2;
    }
}
