package wainbook.isolation.permit;

import java.util.List;
import wainbook.ledger.History;

/** What this room must know of the work at the vehicle; answered by the room that records it. */
public interface WorkUnderPermit {

    /** Items given to a later stage that must be done before anything is energised. */
    List<String> barringEnergising(History vehicle);
}
