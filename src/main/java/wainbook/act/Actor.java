package wainbook.act;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;

/**
 * Who asks, from which device, by which clock. The clock comes with the person and not from the container, since a
 * rehearsal plays people by a clock of its own beside the real one.
 */
public record Actor(String who, Optional<Instant> deviceAt, Optional<String> station, Clock clock) {

    public static Actor of(String who, Clock clock) {
        return new Actor(who, Optional.empty(), Optional.empty(), clock);
    }

    public Moment at(Instant time) {
        return new Moment(who, time, deviceAt, station);
    }
}
