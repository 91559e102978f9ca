package wainbook.engineering.flow.status;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.flow.status.Doing.AWAITING_SIGN_OFF;
import static wainbook.engineering.flow.status.Doing.BLOCKED;
import static wainbook.engineering.flow.status.Doing.DOWN;
import static wainbook.engineering.flow.status.Doing.HELD;
import static wainbook.engineering.flow.status.Doing.OFF_SHIFT;
import static wainbook.engineering.flow.status.Doing.OVER_TAKT;
import static wainbook.engineering.flow.status.Doing.STARVED;
import static wainbook.engineering.flow.status.Doing.WORKING;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.status.StationPast.Span;
import wainbook.engineering.flow.status.StationPast.Stay;
import wainbook.engineering.flow.status.Timeline.Stretch;

/** What a station was doing follows from what the record has of it. Times in minutes, made milliseconds. */
class StationPastTest {

    private static final long MINUTE = 60_000;
    private static final int SEEDS = 300;

    @Test
    void one_vehicle_from_its_arrival_to_its_leaving() {
        var stay = new Stay(
                span(10, 200),
                List.of(span(40, 70)),
                List.of(span(120, 150)),
                List.of(span(150, 200)),
                90 * MINUTE,
                List.of(1));
        var station = new StationPast(List.of(span(0, 300)), List.of(span(20, 30)), List.of(stay));

        assertThat(told(station, 0, 210))
                .containsExactly(
                        "0 STARVED",
                        "10 WORKING",
                        "20 DOWN",
                        "30 WORKING",
                        "40 HELD",
                        "70 WORKING",
                        "100 OVER_TAKT",
                        "120 AWAITING_SIGN_OFF",
                        "150 BLOCKED",
                        "200 STARVED");
    }

    @Test
    void the_takt_counts_working_minutes_and_does_not_stop_for_a_hold() {
        var stay = new Stay(span(0, 500), List.of(span(10, 50)), List.of(), List.of(), 90 * MINUTE, List.of());
        var station = new StationPast(List.of(span(0, 60), span(75, 100), span(400, 480)), List.of(), List.of(stay));

        assertThat(told(station, 0, 500))
                .containsExactly(
                        "0 WORKING",
                        "10 HELD",
                        "50 WORKING",
                        "60 OFF_SHIFT",
                        "75 WORKING",
                        "100 OFF_SHIFT",
                        "400 WORKING",
                        "405 OVER_TAKT",
                        "480 OFF_SHIFT");
    }

    @Test
    void a_stay_that_began_before_the_period_brings_its_takt_with_it() {
        var stay = new Stay(span(0, 500), List.of(), List.of(), List.of(), 90 * MINUTE, List.of());
        var station = new StationPast(List.of(span(0, 500)), List.of(), List.of(stay));

        assertThat(told(station, 80, 200)).containsExactly("80 WORKING", "90 OVER_TAKT");
        assertThat(told(station, 100, 200)).containsExactly("100 OVER_TAKT");
        assertThat(told(station, 200, 200)).isEmpty();
    }

    /** States partition time: they add up to the period, and all but off shift to the hours of the station. */
    @Test
    void states_partition_time_exactly() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            StationPast station = random(random);
            long from = random.nextLong(0, 40_000_000);
            long to = from + random.nextLong(1, 200_000_000);
            List<Stretch> stretches = station.stretches(from, to);

            assertThat(stretches.get(0).fromMillis()).isEqualTo(from);
            assertThat(stretches.get(stretches.size() - 1).toMillis()).isEqualTo(to);
            var timeline = Timeline.row(List.of(stretches));
            assertThat(timeline.millis(0)).as("seed %d", seed).isEqualTo(to - from);
            long hours = station.working().stream()
                    .mapToLong(span -> Math.max(0, Math.min(to, span.toMillis()) - Math.max(from, span.fromMillis())))
                    .sum();
            assertThat(timeline.millis(0) - timeline.millis(0, OFF_SHIFT))
                    .as("seed %d", seed)
                    .isEqualTo(hours);
        }
    }

    /** At every moment asked, the stretch has the state of the signs at that moment. */
    @Test
    void a_stretch_is_what_the_signs_say_at_any_moment_of_it() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            StationPast station = random(random);
            List<Stretch> stretches = station.stretches(0, 200_000_000);
            for (int i = 0; i < 50; i++) {
                long at = random.nextLong(0, 200_000_000);
                Stretch found = stretches.stream()
                        .filter(one -> one.fromMillis() <= at && at < one.toMillis())
                        .findFirst()
                        .orElseThrow();
                assertThat(found.doing()).as("seed %d at %d", seed, at).isEqualTo(plainly(station, at));
            }
        }
    }

    /** Cut at any moment, the two parts together are the whole. */
    @Test
    void a_period_is_the_sum_of_its_parts() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            StationPast station = random(random);
            long cut = random.nextLong(1, 200_000_000);
            var whole = Timeline.row(List.of(station.stretches(0, 200_000_000)));
            var before = Timeline.row(List.of(station.stretches(0, cut)));
            var after = Timeline.row(List.of(station.stretches(cut, 200_000_000)));
            for (Doing doing : Doing.values()) {
                assertThat(before.millis(0, doing) + after.millis(0, doing)).isEqualTo(whole.millis(0, doing));
            }
        }
    }

    /** Minute by minute and without a sweep: the sum of the working milliseconds since the arrival, and every span looked at. */
    private static Doing plainly(StationPast station, long at) {
        boolean shift = station.working().stream().anyMatch(span -> span.holds(at));
        boolean down = station.down().stream().anyMatch(span -> span.holds(at));
        for (Stay stay : station.stays()) {
            if (stay.at().holds(at)) {
                long elapsed = station.working().stream()
                        .mapToLong(span -> Math.max(
                                0,
                                Math.min(at, span.toMillis())
                                        - Math.max(stay.at().fromMillis(), span.fromMillis())))
                        .sum();
                boolean late = elapsed >= stay.taktMillis() && (elapsed > stay.taktMillis() || shift);
                if (!shift) {
                    return OFF_SHIFT;
                }
                if (down) {
                    return DOWN;
                }
                if (stay.held().stream().anyMatch(span -> span.holds(at))) {
                    return HELD;
                }
                if (stay.signed().stream().anyMatch(span -> span.holds(at))) {
                    return BLOCKED;
                }
                if (stay.done().stream().anyMatch(span -> span.holds(at))) {
                    return AWAITING_SIGN_OFF;
                }
                return late ? OVER_TAKT : WORKING;
            }
        }
        return !shift ? OFF_SHIFT : down ? DOWN : STARVED;
    }

    private static StationPast random(SplittableRandom random) {
        List<Span> working = apart(random, 40, 200_000_000);
        var stays = new ArrayList<Stay>();
        for (Span at : apart(random, 12, 200_000_000)) {
            stays.add(new Stay(
                    at,
                    some(random, at),
                    some(random, at),
                    some(random, at),
                    random.nextLong(0, 20_000_000),
                    List.of()));
        }
        return new StationPast(working, some(random, new Span(0, 200_000_000)), stays);
    }

    private static List<Span> some(SplittableRandom random, Span within) {
        var spans = new ArrayList<Span>();
        for (int i = random.nextInt(4); i > 0; i--) {
            long from = random.nextLong(within.fromMillis(), within.toMillis());
            spans.add(new Span(from, random.nextLong(from, within.toMillis() + 5_000_000) + 1));
        }
        return spans;
    }

    /** In their order, some touching. */
    private static List<Span> apart(SplittableRandom random, int most, long end) {
        var spans = new ArrayList<Span>();
        long at = random.nextLong(0, 9_000_000);
        for (int i = random.nextInt(most); i > 0 && at < end; i--) {
            long to = at + random.nextLong(1, 12_000_000);
            spans.add(new Span(at, to));
            at = to + (random.nextInt(3) == 0 ? 0 : random.nextLong(1, 12_000_000));
        }
        return spans;
    }

    private static List<String> told(StationPast station, int from, int to) {
        return station.stretches(from * MINUTE, to * MINUTE).stream()
                .map(one -> one.fromMillis() / MINUTE + " " + one.doing())
                .toList();
    }

    private static Span span(int from, int to) {
        return new Span(from * MINUTE, to * MINUTE);
    }
}
