package wainbook.line.milestone;

import java.util.Optional;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Saying;
import wainbook.line.LineSaying.RoadReleased;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Ordered;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/** What an order passes on its way, in the order in which it does. */
public enum Milestone {
    /** The donor came in. */
    INTAKE,
    /** The gate of the first stage of the route was signed. */
    STRIPPED,
    /** Work that takes two, live, passed for the first time: the high voltage was switched on. */
    ENERGISED,
    /** Released for the road for the first time. */
    ROAD_RELEASED,
    HANDED_OVER;

    /** Whether an entry can say anything of milestones: asked of every entry, so it is cheap. */
    static boolean maySay(Saying said) {
        return said instanceof DonorReceived
                || said instanceof SignedOff
                || said instanceof Attended
                || said instanceof RoadReleased
                || said instanceof HandedOver
                || said instanceof Voided;
    }

    /**
     * The milestone that an entry reaches, whether or not it was reached before.
     *
     * @param ordered with the stages of its route; absent for a vehicle that came back, which is stripped no more
     */
    static Optional<Milestone> of(Saying said, Optional<Ordered> ordered) {
        if (said instanceof DonorReceived) {
            return Optional.of(INTAKE);
        }
        if (said instanceof SignedOff signed) {
            return ordered.filter(order -> order.stages().indexOf(signed.stage()) == 0)
                    .map(order -> STRIPPED);
        }
        if (said instanceof Attended attended) {
            return Optional.of(attended)
                    .filter(one -> one.verdict() == Verdict.PASS && one.basis().condition() == Condition.LIVE)
                    .map(one -> ENERGISED);
        }
        if (said instanceof RoadReleased) {
            return Optional.of(ROAD_RELEASED);
        }
        return said instanceof HandedOver ? Optional.of(HANDED_OVER) : Optional.empty();
    }
}
