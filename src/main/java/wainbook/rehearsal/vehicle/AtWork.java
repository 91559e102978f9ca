package wainbook.rehearsal.vehicle;

import java.time.Instant;
import wainbook.gate.Gate;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.station.StageRecord;

/**
 * The work at one vehicle for as long as it stands at a stage, one thing after another, and each looked for anew: people may
 * have done something meanwhile.
 */
public final class AtWork {

    private static final double CALLS = 0.01;

    private final AtVehicle at;
    private final Legs way;
    private final String stage;
    private final StageWork work;

    /**
     * @param step of the line, for who works there
     * @param pace clock minutes for a planned minute
     */
    public AtWork(AtVehicle at, Legs way, String stage, int step, double pace) {
        this.at = at;
        this.way = way;
        this.stage = stage;
        this.work = way.work(stage, step, pace);
    }

    /** What was found to do. */
    public enum Next {
        DONE,
        SIGNED,
        /** Signed before: the vehicle may go on. */
        NOTHING,
        /** Nothing that would be done in time: the vehicle is left so that nobody needs to stay. */
        TOO_LATE
    }

    /** Does the one thing that is next, if it would be done by a time. */
    public Next next(Instant end) {
        if (work.events().comes()
                || work.events().letGo()
                || work.events().partComes()
                || work.events().closes()) {
            return Next.DONE;
        }
        if (!Nonconformities.of(at.history()).awaitingDisposition().isEmpty()) {
            work.events().dispose();
            return Next.DONE;
        }
        StageRecord record = at.record(stage);
        if (!record.unsettled().isEmpty()) {
            return item(end);
        }
        if (Gate.of(at.history(), record).standing() == Gate.Standing.SIGNED) {
            return Next.NOTHING;
        }
        work.makeSafe();
        way.sign(stage);
        return Next.SIGNED;
    }

    private Next item(Instant end) {
        if (at.dice.falls(CALLS)) {
            work.events().call();
            return Next.DONE;
        }
        if (work.next(end)) {
            return Next.DONE;
        }
        work.makeSafe();
        return Next.TOO_LATE;
    }
}
