package wainbook.engineering.electrical;

import wainbook.engineering.Step;

/** Energy in a capacitor: E = ½ C U². */
final class Capacitor {

    private Capacitor() {}

    static double energyJ(double capacitanceF, double voltageV) {
        return capacitanceF * voltageV * voltageV / 2;
    }

    static Step step(String name, double capacitanceF, double voltageV) {
        return Step.of(
                name, "E = ½ · C · U²", energyJ(capacitanceF, voltageV), "J", "½ · %s · %s²", capacitanceF, voltageV);
    }
}
