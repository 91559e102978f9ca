package wainbook.engineering.weights.axle;

import wainbook.engineering.Source;

/**
 * Classes of buses, and what a person weighs in them. 68 kg read second-hand (Directive 97/27/EC, Annex I 7.4.3.3.1); the others and the
 * standing areas from memory of UN R107, Annex 3.
 */
public enum PassengerClass {
    I(68, 0.125),
    II(71, 0.15),
    III(71, 0),
    A(68, 0.125),
    B(71, 0);

    public static final double DRIVER_KG = 75;

    public static final Source SOURCE =
            Source.memory("Directive 97/27/EC, Annex I 7.4.3.3.1; UN R107, Annex 3", "mass of a person by class");

    private final double personKg;
    private final double standingM2;

    PassengerClass(double personKg, double standingM2) {
        this.personKg = personKg;
        this.standingM2 = standingM2;
    }

    public double personKg() {
        return personKg;
    }

    /** @return for each standing person; 0 where nobody stands */
    public double standingM2() {
        return standingM2;
    }
}
