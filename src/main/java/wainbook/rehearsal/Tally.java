package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jboss.logging.Logger;
import wainbook.act.Reason;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.time.Turns;
import wainbook.rehearsal.vehicle.AtVehicle.Refused;

/** What came of a played shift so far, and what was left out because the works would not let it happen. */
final class Tally {

    private static final Logger LOG = Logger.getLogger("wainbook");
    private static final int KEPT = 12;
    private static final Duration AFTER_A_REFUSAL = Duration.ofMinutes(6);

    /**
     * Something that was not done.
     *
     * @param what that was to be done, for whoever wonders
     * @param reasons of the refusal; empty where nobody and nothing was there for it
     */
    record LeftOut(Instant at, String place, String what, List<Reason> reasons) {
        LeftOut {
            reasons = List.copyOf(reasons);
        }
    }

    private final List<LeftOut> leftOut = new ArrayList<>();
    private int moved;
    private int signed;
    private int left;

    /** Tries what is next; false if it was not possible, since people may be there before: it is told, and time passes. */
    boolean attempt(String place, PlayedClock clock, Runnable act) {
        try {
            act.run();
            return true;
        } catch (Turns.Over over) {
            throw over;
        } catch (Refused refused) {
            leaves(new LeftOut(clock.instant(), place, refused.getMessage(), refused.reasons()));
            clock.pass(AFTER_A_REFUSAL);
        } catch (RuntimeException notPossible) {
            LOG.warnf(notPossible, "the play at %s goes on after something that was not possible", place);
            leaves(new LeftOut(clock.instant(), place, String.valueOf(notPossible.getMessage()), List.of()));
            clock.pass(AFTER_A_REFUSAL);
        }
        return false;
    }

    private synchronized void leaves(LeftOut one) {
        left++;
        leftOut.add(0, one);
        if (leftOut.size() > KEPT) {
            leftOut.remove(KEPT);
        }
    }

    synchronized void moved() {
        moved++;
    }

    synchronized void signed() {
        signed++;
    }

    synchronized int moves() {
        return moved;
    }

    synchronized int signatures() {
        return signed;
    }

    synchronized int leftOutInAll() {
        return left;
    }

    /** The newest first. */
    synchronized List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }
}
