package wainbook.engineering.flow.forecast.model;

import java.util.OptionalInt;

/** Where a vehicle is at minute 0, and how far. Stages count from 0 in the order of the line. */
public sealed interface Whereabouts {

    /**
     * In front of the line.
     *
     * @param releaseMinute not set going earlier
     */
    record Waiting(double releaseMinute) implements Whereabouts {}

    /**
     * In a place in front of this stage, or on the way there.
     *
     * @param arrivesMinute 0 or earlier if it is there
     */
    record Before(int stage, double arrivesMinute) implements Whereabouts {}

    /** @param workedMinutes working minutes it has been worked on there, held minutes left out */
    record AtWork(int stage, double workedMinutes) implements Whereabouts {}

    /**
     * All items done, gate not signed.
     *
     * @param waitedMinutes of the signers' time since then
     */
    record Unsigned(int stage, double waitedMinutes) implements Whereabouts {}

    /** Gate signed, and still there. */
    record Signed(int stage) implements Whereabouts {}

    /**
     * Off the line in a repair bay.
     *
     * @param repair in working minutes of the line
     * @param spentMinutes of them
     * @param back the stage at which it comes in again, in front of the first vehicle that has not set off to it by then; empty if
     *     it is finished in the bay
     */
    record InBay(Minutes repair, double spentMinutes, OptionalInt back) implements Whereabouts {}

    /**
     * Through the line.
     *
     * @param next the appointment it needs next, counted from 0; readyMinute not before
     */
    record BehindTheLine(int next, double readyMinute) implements Whereabouts {}

    /**
     * Done with everything.
     *
     * @param minute when, 0 or earlier
     */
    record Finished(double minute) implements Whereabouts {}
}
