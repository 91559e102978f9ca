package wainbook.isolation.proof;

/** Which points a proof covers. */
public enum Scope {
    POINTS_OF_WORK,
    ALL_POINTS
}
