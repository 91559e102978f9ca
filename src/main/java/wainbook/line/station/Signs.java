package wainbook.line.station;

/**
 * What is known of a station, and the state that follows: the first line that is true.
 *
 * @param down an open call for help says that work stands still here
 * @param vehicle whether one stands here
 * @param done every item is settled, nothing undecided and nothing refused stands against the gate
 * @param signed the gate is signed, and the evidence is what was signed
 */
public record Signs(boolean down, boolean vehicle, boolean held, boolean done, boolean signed, boolean overTakt) {

    public static Signs empty() {
        return new Signs(false, false, false, false, false, false);
    }

    /** Elapsed time above the takt is shown beside every state; it is the state only while work is open. */
    public StationState state() {
        if (down) {
            return StationState.DOWN;
        }
        if (!vehicle) {
            return StationState.STARVED;
        }
        if (held) {
            return StationState.HELD;
        }
        if (signed) {
            return StationState.BLOCKED;
        }
        if (done) {
            return StationState.AWAITING_SIGN_OFF;
        }
        return overTakt ? StationState.OVER_TAKT : StationState.WORKING;
    }

    /** Off shift nothing is blamed on anybody. */
    StationState state(boolean working) {
        return working ? state() : StationState.OFF_SHIFT;
    }
}
