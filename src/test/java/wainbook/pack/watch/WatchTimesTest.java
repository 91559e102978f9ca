package wainbook.pack.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** When a damaged pack is read: 0, 15, 30, 60 minutes, then hourly for 24 hours. Common practice, no source. */
class WatchTimesTest {

    private static final Instant BEGUN = Instant.parse("2026-03-10T09:00:00Z");

    /** Written here a second time, minute by minute. */
    private static final List<Integer> MINUTES = List.of(
            0, 15, 30, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600, 660, 720, 780, 840, 900, 960, 1020, 1080, 1140,
            1200, 1260, 1320, 1380, 1440);

    @Test
    void the_times_are_those_and_no_others() {
        assertThat(read().planned())
                .containsExactlyElementsOf(
                        MINUTES.stream().map(WatchTimesTest::at).toList());
    }

    @Test
    void at_every_minute_of_two_days_the_next_time_is_the_first_that_was_not_read() {
        for (int done = 0; done <= MINUTES.size(); done++) {
            WatchTimes times = read(MINUTES.subList(0, done).stream()
                    .mapToInt(Integer::intValue)
                    .toArray());
            if (done == MINUTES.size()) {
                assertThat(times.next()).isEmpty();
                assertThat(times.complete()).isTrue();
            } else {
                assertThat(times.next()).contains(at(MINUTES.get(done)));
                assertThat(times.complete()).isFalse();
            }
            for (int minute = 0; minute <= 2 * 1440; minute++) {
                boolean late = done < MINUTES.size() && minute > MINUTES.get(done) + 5;
                assertThat(times.late(at(minute)))
                        .as(done + " read, minute " + minute)
                        .isEqualTo(late);
            }
        }
    }

    @Test
    void a_reading_counts_from_five_minutes_before_its_time() {
        assertThat(read(0, 10).next()).contains(at(30));
        assertThat(read(0, 9).next()).contains(at(15));
    }

    @Test
    void a_time_is_late_only_when_five_minutes_have_gone_by() {
        assertThat(read(0).late(at(20))).isFalse();
        assertThat(read(0).late(at(20).plusMillis(1))).isTrue();
    }

    @Test
    void what_was_missed_stays_missed_though_the_watch_goes_on() {
        WatchTimes times = read(0, 40, 60);
        assertThat(times.missed(at(61))).containsExactly(at(15), at(30));
        assertThat(times.next()).contains(at(120));
        assertThat(times.missed(at(125))).containsExactly(at(15), at(30));
        assertThat(times.missed(at(126))).containsExactly(at(15), at(30), at(120));
    }

    @Test
    void nothing_is_missed_where_every_reading_lies_within_the_tolerance() {
        for (int off = -5; off <= 5; off++) {
            int by = off;
            int[] read = MINUTES.stream()
                    .mapToInt(minute -> Math.max(0, minute + by))
                    .toArray();
            assertThat(read(read).missed(at(3000))).as("off by " + off).isEmpty();
            assertThat(read(read).complete()).isTrue();
        }
    }

    @Test
    void one_reading_after_a_day_is_no_watch() {
        assertThat(read(1440).missed(at(1441))).hasSize(MINUTES.size() - 1);
    }

    private static WatchTimes read(int... minutes) {
        var readAt = new ArrayList<Instant>();
        IntStream.of(minutes).mapToObj(WatchTimesTest::at).forEach(readAt::add);
        return new WatchTimes(BEGUN, readAt);
    }

    private static Instant at(int minutes) {
        return BEGUN.plus(Duration.ofMinutes(minutes));
    }
}
