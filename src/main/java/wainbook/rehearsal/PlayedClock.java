package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on only when it is told to. */
final class PlayedClock extends Clock {

    private Instant now;

    PlayedClock(Instant now) {
        this.now = now;
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    /** Goes on to a time; a time that is past changes nothing. */
    void waitUntil(Instant time) {
        if (time.isAfter(now)) {
            now = time;
        }
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
