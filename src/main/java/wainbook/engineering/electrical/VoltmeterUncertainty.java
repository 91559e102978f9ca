package wainbook.engineering.electrical;

import wainbook.engineering.Step;

/**
 * Uncertainty of the voltmeter method: each reading and the resistor rectangular (half-width / √3) and independent, which
 * lies on the safe side when one meter's gain error is common to all; propagated to first order; k = 2.
 */
final class VoltmeterUncertainty {

    private static final double COVERAGE = 2;

    private VoltmeterUncertainty() {}

    static double expandedOhm(IsolationVoltmeter.Inputs in, double isolationOhm) {
        double x = in.withResistorV() / in.railV();
        double resistor = in.insertedTolerancePercent() / 100 / Math.sqrt(3);
        double bus = relative(in, in.busV());
        double before = x / (1 - x) * relative(in, in.railV());
        double with = 1 / (1 - x) * relative(in, in.withResistorV());
        return COVERAGE * isolationOhm * Math.sqrt(resistor * resistor + bus * bus + before * before + with * with);
    }

    static Step step(IsolationVoltmeter.Inputs in, IsolationVoltmeter.Results out) {
        return Step.of(
                "uncertainty",
                "U = 2 · Ri · √(r0² + rb² + (x/(1−x) · r)² + (1/(1−x) · r′)²), x = U′/U, r = half-width / (√3 · reading)",
                out.expandedUncertaintyOhm(),
                "ohm",
                "x = %s / %s, each reading ± (%s %% + %s V), R0 ± %s %%",
                in.withResistorV(),
                in.railV(),
                in.readingAccuracyPercent(),
                in.readingFloorV(),
                in.insertedTolerancePercent());
    }

    private static double relative(IsolationVoltmeter.Inputs in, double readingV) {
        double halfWidthV = in.readingAccuracyPercent() / 100 * readingV + in.readingFloorV();
        return halfWidthV / Math.sqrt(3) / readingV;
    }
}
