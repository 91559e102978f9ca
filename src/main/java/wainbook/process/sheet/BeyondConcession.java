package wainbook.process.sheet;

/** What a works cannot give away by concession, whatever the limit. */
public enum BeyondConcession {
    BRAKES,
    STEERING,
    AXLE_LOADS,
    PROOF_OF_DEAD
}
