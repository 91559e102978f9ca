package wainbook.order.fitted;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;

/** The parts that stand on a vehicle's record by their serials: answered by the room that records them. */
public interface FittedParts {

    /** @param packType as the pack was received; absent where it is no pack, or was received by nobody */
    record Part(String part, String serial, Optional<String> packType) {}

    List<Part> of(History history);
}
