package wainbook.engineering.energy.resistance;

/** The acceleration of free fall, rounded as vehicle calculations have it. */
public final class Gravity {

    public static final double MPS2 = 9.81;

    private Gravity() {}
}
