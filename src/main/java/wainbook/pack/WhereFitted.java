package wainbook.pack;

import java.util.Map;
import java.util.Optional;

/** Which vehicle a pack is fitted in: answered by the room that records what is fitted. */
public interface WhereFitted {

    /** The work order of the vehicle that has a part with this serial. */
    Optional<String> order(String serial);

    /** All of them, by serial. */
    Map<String, String> orders();
}
