package wainbook.engineering.energy.resistance;

import java.util.List;

/**
 * The tyres of one axle. A tyre rolls a little more easily, for its load, the more it carries:
 * f = Σ a · RRC · (a · m · g / (w · F))^(β − 1), β = 0.9. From memory of the European Union’s consumption method.
 *
 * @param loadShare a, of the vehicle’s weight; those of all axles make 1
 * @param rollingCoefficient RRC, newton by newton, at the load of the test
 * @param tyres w, on this axle
 * @param testLoadN F, the load at which the coefficient was measured (ISO 28580)
 */
public record TyreAxle(double loadShare, double rollingCoefficient, int tyres, double testLoadN) {

    private static final double BETA = 0.9;

    /** @return the vehicle’s rolling coefficient at this mass */
    public static double together(List<TyreAxle> axles, double massKg) {
        return axles.stream()
                .mapToDouble(axle -> axle.loadShare * axle.coefficient(massKg))
                .sum();
    }

    /** @return the coefficient of this axle’s tyres under a vehicle of this mass */
    public double coefficient(double massKg) {
        double loadN = loadShare * massKg * Gravity.MPS2;
        return rollingCoefficient * Math.pow(loadN / (tyres * testLoadN), BETA - 1);
    }
}
