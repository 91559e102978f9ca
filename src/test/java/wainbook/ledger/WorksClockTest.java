package wainbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class WorksClockTest {

    @Test
    void ticks_in_whole_microseconds_and_tells_milliseconds_too() {
        Clock clock = WorksClock.wholeMicroseconds(() -> Instant.parse("2026-11-25T12:00:00.123456789Z"));
        assertThat(clock.instant()).isEqualTo(Instant.parse("2026-11-25T12:00:00.123456Z"));
        assertThat(clock.millis())
                .isEqualTo(Instant.parse("2026-11-25T12:00:00.123Z").toEpochMilli());
    }
}
