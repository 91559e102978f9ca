package wainbook.rehearsal.scenario;

import java.util.ArrayList;
import java.util.List;

/**
 * Where every vehicle stands when a demonstration begins: a line in full work, with one vehicle that keeps the others
 * waiting. A vehicle goes by the slot in which it entered the line, counted from the present one; what has a later slot
 * waits before the line, what has left it has an earlier one.
 */
public record Scene(List<Member> members) {

    /** How a vehicle is found. */
    public enum Found {
        /** At work; the last entry a few minutes old. */
        WORKING,
        /** Nearly done, with a nonconformity that nobody has decided on: nothing behind it can move. */
        STUCK,
        /** Done and signed; the station ahead is taken. */
        SIGNED,
        /** Done; the gate waits for its inspector. One joint of it was recorded as no hand and no wrench would. */
        UNSIGNED,
        /** Held for parts. */
        HELD,
        /** At work, help called and not come yet; something light was left to the next stage. */
        CALLING
    }

    /**
     * One vehicle on the line.
     *
     * @param entry the slot in which it came onto the line
     * @param step which stretch of the line it is at, one slot long, counted from 0
     * @param since the slot in which it came there
     * @param share of the items of its stage that are done
     */
    public record Member(int entry, int step, int since, double share, Found found) {}

    public Scene {
        members = List.copyOf(members);
    }

    private record Look(double share, Found found) {}

    private static final List<Look> BEHIND_THE_LAST = List.of(
            new Look(0.85, Found.STUCK),
            new Look(1, Found.SIGNED),
            new Look(1, Found.UNSIGNED),
            new Look(0.9, Found.WORKING),
            new Look(0.55, Found.WORKING),
            new Look(0.6, Found.HELD),
            new Look(0.8, Found.CALLING),
            new Look(0.9, Found.WORKING));

    /** @param steps of the line, a stage with two stations counting two */
    public static Scene of(int steps) {
        var members = new ArrayList<Member>();
        int last = steps - 1;
        members.add(new Member(-last, last, 0, 0.45, Found.WORKING));
        for (int k = 1; last - 1 - k >= 0; k++) {
            Look look = BEHIND_THE_LAST.get((k - 1) % BEHIND_THE_LAST.size());
            members.add(new Member(k - last, last - 1 - k, -1, look.share(), look.found()));
        }
        return new Scene(members);
    }
}
