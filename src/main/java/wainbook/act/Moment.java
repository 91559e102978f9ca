package wainbook.act;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Who acts, when and where. Taken once for an act, after the streams it writes are locked.
 *
 * @param who the person's number; names never enter the ledger
 * @param at the server's time in whole microseconds: the only one that rules are judged by
 * @param deviceAt what the device's clock said, kept beside as a fact about the device
 * @param station the station the device stands at
 */
public record Moment(String who, Instant at, Optional<Instant> deviceAt, Optional<String> station) {

    public Moment {
        if (who.isBlank()) {
            throw new IllegalArgumentException("a moment names a person");
        }
        at = at.truncatedTo(ChronoUnit.MICROS);
        deviceAt = deviceAt.map(time -> time.truncatedTo(ChronoUnit.MICROS));
    }

    public static Moment of(String who, Instant at) {
        return new Moment(who, at, Optional.empty(), Optional.empty());
    }

    public static Moment of(String who, Instant at, String station) {
        return new Moment(who, at, Optional.empty(), Optional.of(station));
    }
}
