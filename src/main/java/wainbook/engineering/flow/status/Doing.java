package wainbook.engineering.flow.status;

/** What a station is doing at a moment: always exactly one of these. */
public enum Doing {
    OFF_SHIFT,
    DOWN,
    STARVED,
    HELD,
    WORKING,
    OVER_TAKT,
    AWAITING_SIGN_OFF,
    BLOCKED;

    /** Waits for another station. */
    public boolean waits() {
        return this == STARVED || this == BLOCKED;
    }

    /** Neither waits nor is off shift: what the bottleneck is told by. */
    public boolean active() {
        return !waits() && this != OFF_SHIFT;
    }
}
