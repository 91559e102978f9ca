package wainbook.engineering.flow.status;

/**
 * What is known of a station at a moment, and what it is doing by that: the first line that is true.
 *
 * @param shift the station's own hours run
 * @param down somebody says that work stands still here
 * @param vehicle whether one stands here
 * @param held a hold on the vehicle is in force
 * @param done every item is settled, nothing undecided and nothing refused stands against the gate
 * @param signed the gate is signed, and the evidence is what was signed
 * @param overTakt more working minutes have passed here than the takt
 */
public record Signs(
        boolean shift, boolean down, boolean vehicle, boolean held, boolean done, boolean signed, boolean overTakt) {

    /** Without a vehicle. */
    public static Signs empty(boolean shift, boolean down) {
        return new Signs(shift, down, false, false, false, false, false);
    }

    /** As if the shift ran: what will hold in the morning. */
    public Signs onShift() {
        return new Signs(true, down, vehicle, held, done, signed, overTakt);
    }

    /** Off shift nothing is blamed on anybody. Time above the takt is what it is doing only while work is open. */
    public Doing doing() {
        if (!shift) {
            return Doing.OFF_SHIFT;
        }
        if (down) {
            return Doing.DOWN;
        }
        if (!vehicle) {
            return Doing.STARVED;
        }
        if (held) {
            return Doing.HELD;
        }
        if (signed) {
            return Doing.BLOCKED;
        }
        if (done) {
            return Doing.AWAITING_SIGN_OFF;
        }
        return overTakt ? Doing.OVER_TAKT : Doing.WORKING;
    }
}
