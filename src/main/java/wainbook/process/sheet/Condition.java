package wainbook.process.sheet;

/** What the electrical state of the vehicle must be while an item is worked. */
public enum Condition {
    /** Nothing is asked. */
    NONE,
    /** No source of dangerous voltage is on the vehicle, as an authorised person has declared. */
    NO_SOURCE_ABOARD,
    /** Safe isolation is in force, with the worker's own lock on. */
    DEAD,
    /** A sanction for test stands over the isolation: other permits suspended, other people's locks off. */
    TEST_UNDER_ISOLATION,
    /** A live-work permit, with a second competent person. */
    LIVE;

    /** Whether a conductor of the high-voltage system may be opened, closed or tightened by hand. */
    public boolean handsOnConductors() {
        return switch (this) {
            case NO_SOURCE_ABOARD, DEAD -> true;
            case NONE, TEST_UNDER_ISOLATION, LIVE -> false;
        };
    }
}
