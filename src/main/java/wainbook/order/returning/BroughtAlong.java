package wainbook.order.returning;

import java.util.List;
import wainbook.ledger.History;
import wainbook.ledger.Saying;

/** What a vehicle that comes back brings along, as each room knows it: sources aboard, parts by serial. */
public interface BroughtAlong {

    /** What must be said on the new record, so that it tells without the former one how the vehicle comes. */
    List<Saying> of(History earlier);
}
