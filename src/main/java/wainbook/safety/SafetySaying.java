package wainbook.safety;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/**
 * What is said of safety. Near misses, visits, and stops of a place lie in the stream of the works; a stop of a vehicle in the
 * vehicle's own, beside the hold that it puts on.
 */
public sealed interface SafetySaying extends Saying {

    /** @param order the vehicle it was at or about */
    @Kind("safety.nearMissReported/1")
    record NearMissReported(int nearMiss, Optional<String> order, Optional<String> station, Optional<String> words)
            implements SafetySaying {}

    @Kind("safety.nearMissTold/1")
    record NearMissTold(int nearMiss, String words) implements SafetySaying {}

    @Kind("safety.nearMissLookedAt/1")
    record NearMissLookedAt(int nearMiss, String owner, LocalDate dueOn) implements SafetySaying {}

    @Kind("safety.nearMissClosed/1")
    record NearMissClosed(int nearMiss, String changed) implements SafetySaying {}

    /** @param hold the number of the hold on the vehicle; absent where a place is stopped, or only the works told */
    @Kind("safety.workStopped/1")
    record WorkStopped(int stop, Optional<Integer> hold, Optional<String> station, Optional<String> words)
            implements SafetySaying {}

    @Kind("safety.stopTold/1")
    record StopTold(int stop, String words) implements SafetySaying {}

    /** Of a place only: a vehicle goes on when its hold is released. */
    @Kind("safety.stopLifted/1")
    record StopLifted(int stop, String done) implements SafetySaying {}

    /** @param nameHash of name and firm with their salt, where the visitor is new; the names lie outside the ledger */
    @Kind("safety.visitorInducted/1")
    record VisitorInducted(String visitor, Optional<String> nameHash, LocalDate validTo) implements SafetySaying {}

    /**
     * The host is who says it.
     *
     * @param permit the contractor's permit that is worked under, as {@code vehicle/number}
     */
    @Kind("safety.visitorEntered/1")
    record VisitorEntered(int visit, String visitor, String area, LocalDate inductedTo, Optional<String> permit)
            implements SafetySaying {}

    /** Whoever says it is the host from now on. */
    @Kind("safety.hostTookOver/1")
    record HostTookOver(int visit) implements SafetySaying {}

    @Kind("safety.visitorLeft/1")
    record VisitorLeft(int visit) implements SafetySaying {}
}
