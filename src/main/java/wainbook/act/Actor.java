package wainbook.act;

import java.time.Instant;
import java.util.Optional;

/** Who asks, from which device: a {@link Moment} still without the server's time. */
public record Actor(String who, Optional<Instant> deviceAt, Optional<String> station) {

    public static Actor of(String who) {
        return new Actor(who, Optional.empty(), Optional.empty());
    }

    public Moment at(Instant time) {
        return new Moment(who, time, deviceAt, station);
    }
}
