package wainbook.engineering.weights.axle;

/**
 * One axle.
 *
 * @param fromFrontM behind the foremost axle
 * @param share of its group’s load, from the maker’s data of the suspension
 * @param driven whether the motor drives it
 * @param lifts whether it can be lifted off the road
 */
public record Axle(double fromFrontM, double share, boolean driven, boolean lifts) {

    public static Axle single(double fromFrontM, boolean driven) {
        return new Axle(fromFrontM, 1, driven, false);
    }

    Axle taking(double otherShare) {
        return new Axle(fromFrontM, otherShare, driven, lifts);
    }
}
