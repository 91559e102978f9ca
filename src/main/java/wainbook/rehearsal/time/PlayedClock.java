package wainbook.rehearsal.time;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on only when it is told to. */
public final class PlayedClock extends Clock {

    private Instant now;

    public PlayedClock(Instant now) {
        this.now = now;
    }

    public void pass(Duration time) {
        now = now.plus(time);
    }

    /** Goes on to a time; a time that is past changes nothing. */
    public void waitUntil(Instant time) {
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
