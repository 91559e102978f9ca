package wainbook.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Little;
import wainbook.engineering.flow.status.Timeline;
import wainbook.gate.past.WrittenBus;
import wainbook.line.station.Layout;
import wainbook.order.OrderSaying.Stops;
import wainbook.station.StationSaying.Help;
import wainbook.works.shift.Shifts;

/** What must hold of any record: of lines of three stations played by chance, with holds, refusals, calls for help and bays. */
class RecordedLineLawsTest {

    private static final int SEEDS = 150;
    private static final String[] STAGES = {"strip", "fit", "test"};
    private static final Layout LAYOUT = TwoStations.layout(STAGES);

    @Test
    void states_partition_the_time_of_every_station_exactly() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            Shifts shifts = random.nextBoolean() ? TwoStations.DAY : TwoStations.ALWAYS;
            WrittenBus[] buses = played(random, 6);
            long from = random.nextLong(-300, 3000);
            long to = from + random.nextLong(1, 9000);
            LinePast past = TwoStations.past(from, to, shifts, LAYOUT, buses);
            Timeline timeline = past.timeline();
            long hours = Hours.of(shifts, past.period().begin(), past.period().end()).spans().stream()
                    .mapToLong(span -> span.toMillis() - span.fromMillis())
                    .sum();
            for (int station = 0; station < STAGES.length; station++) {
                assertThat(timeline.millis(station)).as("seed %d", seed).isEqualTo((to - from) * 60_000);
                assertThat(timeline.millis(station) - timeline.millis(station, Doing.OFF_SHIFT))
                        .as("seed %d", seed)
                        .isEqualTo(hours);
            }
        }
    }

    @Test
    void what_is_booked_as_lost_is_what_was_waited() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            Measures found = Measures.of(TwoStations.past(0, 6000, TwoStations.DAY, LAYOUT, played(random, 6)), "");
            double waited = found.stations().stream()
                    .mapToDouble(one -> one.minutes(Doing.BLOCKED) + one.minutes(Doing.STARVED))
                    .sum();

            assertThat(found.lost().stream().mapToDouble(Measures.Lost::minutes).sum())
                    .as("seed %d", seed)
                    .isCloseTo(waited, within(1e-6));
        }
    }

    /** L = λ · W without any rounding, of a window that begins and ends with nothing on the line. */
    @Test
    void littles_law_is_an_identity_of_a_record_that_begins_and_ends_empty() {
        for (int seed = 0; seed < SEEDS; seed++) {
            var random = new SplittableRandom(seed);
            Shifts shifts = random.nextBoolean() ? TwoStations.DAY : TwoStations.ALWAYS;
            LinePast past = TwoStations.past(-100, 40_000, shifts, LAYOUT, played(random, 8));
            Little law =
                    Throughput.of(past.vehicles(), past.period(), past.works()).little();

            assertThat(law.emptyAtBothEnds()).as("seed %d", seed).isTrue();
            assertThat(law.vehicles()).as("seed %d", seed).isEqualTo(8);
            assertThat(law.numberMillis()).as("seed %d", seed).isEqualTo(law.stayMillis());
            assertThat(law.exact()).as("seed %d", seed).isTrue();
        }
    }

    @Test
    void littles_law_is_off_where_the_window_cuts_a_stay() {
        var random = new SplittableRandom(3);
        WrittenBus[] buses = played(random, 8);
        LinePast past = TwoStations.past(200, 40_000, TwoStations.ALWAYS, LAYOUT, buses);
        Little law = Throughput.of(past.vehicles(), past.period(), past.works()).little();

        assertThat(law.atBegin()).isPositive();
        assertThat(law.exact()).isFalse();
    }

    /** Each bus comes to a station when the one before it has left it, and goes the whole way. */
    private static WrittenBus[] played(SplittableRandom random, int vehicles) {
        long[] free = new long[STAGES.length];
        List<WrittenBus> buses = new ArrayList<>();
        for (int i = 0; i < vehicles; i++) {
            var bus = new WrittenBus("WB-" + i, STAGES);
            long now = free[0] + random.nextInt(60);
            for (int stage = 0; stage < STAGES.length; stage++) {
                now = Math.max(now, free[stage]);
                if (stage > 0) {
                    free[stage - 1] = now;
                    bus.forward(now, STAGES[stage]);
                } else {
                    bus.onto(now, STAGES[stage]);
                }
                now = stay(random, bus, STAGES[stage], now);
            }
            free[STAGES.length - 1] = now;
            buses.add(bus.out(now));
        }
        return buses.toArray(WrittenBus[]::new);
    }

    private static long stay(SplittableRandom random, WrittenBus bus, String stage, long arrived) {
        long now = arrived;
        int number = 1 + Arrays.asList(STAGES).indexOf(stage);
        if (random.nextInt(3) == 0) {
            now += random.nextInt(40);
            bus.held(now, number, random.nextBoolean() ? Stops.WORK : Stops.SIGN);
            now += random.nextInt(300);
            bus.released(now, number);
        }
        if (random.nextInt(4) == 0) {
            bus.called(now, number, stage, Help.QUALITY, random.nextBoolean());
            now += random.nextInt(50);
            bus.resolved(now, number);
        }
        if (random.nextInt(6) == 0) {
            bus.off(now, stage);
            now += random.nextInt(500);
            bus.back(now, stage);
        }
        now += random.nextInt(150);
        bus.done(now, stage);
        now += random.nextInt(30);
        if (random.nextInt(4) == 0) {
            bus.refused(now, stage);
            now += random.nextInt(60);
            bus.done(now, stage, "again");
            now += random.nextInt(20);
        }
        bus.signed(now, stage);
        return now + random.nextInt(40);
    }
}
