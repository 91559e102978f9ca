package wainbook.rehearsal.time;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on only when it is told to. */
public final class PlayedClock extends Clock {

    /** Whoever acts beside, by clocks of their own. */
    public interface Others {

        /** Comes back when all that happens elsewhere before this time has happened. */
        void actUntil(Instant time);
    }

    private final Others others;
    private Instant now;

    /** Of somebody who is alone. */
    public PlayedClock(Instant now) {
        this(now, time -> {});
    }

    PlayedClock(Instant now, Others others) {
        this.now = now;
        this.others = others;
    }

    public void pass(Duration time) {
        waitUntil(now.plus(time));
    }

    /** Goes on to a time; a time that is past changes nothing. */
    public void waitUntil(Instant time) {
        if (time.isAfter(now)) {
            others.actUntil(time);
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
