package wainbook.engineering.flow.forecast;

import wainbook.engineering.flow.forecast.model.Whereabouts;

/**
 * Where a vehicle begins, laid out flat.
 *
 * @param stage the first that it still needs; for one behind the line the next appointment
 * @param minute released, arrived, ready or finished
 * @param elapsed minutes of its work, or of its waiting for the signature
 */
record Start(Kind kind, int stage, double minute, double elapsed) {

    enum Kind {
        WAITING,
        BEFORE,
        AT_WORK,
        UNSIGNED,
        SIGNED,
        COMES_BACK,
        ENDS_IN_BAY,
        BEHIND,
        FINISHED;

        /** At a station at minute 0. */
        boolean started() {
            return this == AT_WORK || this == UNSIGNED || this == SIGNED;
        }

        /** Still has work at its first stage. */
        boolean works() {
            return this != UNSIGNED && this != SIGNED;
        }

        boolean inOrder() {
            return started() || this == WAITING || this == BEFORE;
        }
    }

    static Start of(Whereabouts whereabouts) {
        if (whereabouts instanceof Whereabouts.Waiting waiting) {
            return new Start(Kind.WAITING, 0, Math.max(0, waiting.releaseMinute()), 0);
        }
        if (whereabouts instanceof Whereabouts.Before before) {
            return new Start(Kind.BEFORE, before.stage(), Math.max(0, before.arrivesMinute()), 0);
        }
        if (whereabouts instanceof Whereabouts.AtWork atWork) {
            return new Start(Kind.AT_WORK, atWork.stage(), 0, atWork.workedMinutes());
        }
        if (whereabouts instanceof Whereabouts.Unsigned unsigned) {
            return new Start(Kind.UNSIGNED, unsigned.stage(), 0, unsigned.waitedMinutes());
        }
        if (whereabouts instanceof Whereabouts.Signed signed) {
            return new Start(Kind.SIGNED, signed.stage(), 0, 0);
        }
        if (whereabouts instanceof Whereabouts.InBay bay) {
            return bay.back().isPresent()
                    ? new Start(Kind.COMES_BACK, bay.back().getAsInt(), 0, bay.spentMinutes())
                    : new Start(Kind.ENDS_IN_BAY, 0, 0, bay.spentMinutes());
        }
        if (whereabouts instanceof Whereabouts.BehindTheLine behind) {
            return new Start(Kind.BEHIND, behind.next(), Math.max(0, behind.readyMinute()), 0);
        }
        return new Start(Kind.FINISHED, 0, ((Whereabouts.Finished) whereabouts).minute(), 0);
    }

    boolean comesBack() {
        return kind == Kind.COMES_BACK;
    }
}
