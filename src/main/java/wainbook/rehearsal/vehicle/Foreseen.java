package wainbook.rehearsal.vehicle;

import java.time.Instant;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;

/** How long an item takes at the latest that is likely, with what has to be done for it before and after. */
final class Foreseen {

    private static final double SURPRISES_MIN = 6;
    private static final double ISOLATING_MIN = 25;

    /** Restoring what was dead, and a live-work permit with its two readers. */
    private static final double MAKING_LIVE_MIN = 16;

    private Foreseen() {}

    /**
     * When an item begun now is done.
     *
     * @param pace clock minutes for a planned minute
     * @param isolated whether the stage's isolation is in hand already
     */
    static Instant doneBy(CheckItem item, double pace, boolean isolated, Instant now) {
        double minutes = SURPRISES_MIN + item.plannedMinutes() * pace * StageWork.SLOWEST;
        boolean any = item.condition() == Condition.NONE || item.condition() == Condition.NO_SOURCE_ABOARD;
        minutes += any || isolated ? 0 : ISOLATING_MIN;
        minutes += item.condition() == Condition.LIVE ? MAKING_LIVE_MIN : 0;
        minutes += item.asks() instanceof Ask.Wait wait ? wait.minutes() : 0;
        return now.plusSeconds(Math.round(minutes * 60));
    }
}
