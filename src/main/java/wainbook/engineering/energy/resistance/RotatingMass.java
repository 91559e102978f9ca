package wainbook.engineering.energy.resistance;

/**
 * Wheels and motor that are spun up with the vehicle: λ = 1 + (ΣJ + J_motor · i²) / (m · r²). From memory; any textbook.
 *
 * @param wheelsKgM2 moments of inertia of all wheels, added up
 * @param motorKgM2 moment of inertia of the motor
 * @param ratio of all gears between motor and wheels
 * @param rollingRadiusM of the driven wheels
 */
public record RotatingMass(double wheelsKgM2, double motorKgM2, double ratio, double rollingRadiusM) {

    /** @return mass that would be as hard to bring to speed */
    public double equivalentKg() {
        return (wheelsKgM2 + motorKgM2 * ratio * ratio) / (rollingRadiusM * rollingRadiusM);
    }

    /** @return λ, at least 1 */
    public double factor(double massKg) {
        return 1 + equivalentKg() / massKg;
    }
}
