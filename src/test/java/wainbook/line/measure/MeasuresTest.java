package wainbook.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.line.measure.TwoStations.ALWAYS;
import static wainbook.line.measure.TwoStations.DAY;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.gate.past.WrittenBus;
import wainbook.line.measure.Measures.Lost;
import wainbook.line.station.Layout;
import wainbook.order.OrderSaying.Stops;
import wainbook.station.StationSaying.Help;

/** Measures of a line of two stations, counted by hand. The takt is 90 minutes. */
class MeasuresTest {

    private static final Layout LAYOUT = TwoStations.layout("strip", "fit");

    /** Strip 0 to 60, signed at 70, moved on at 100; held 110 to 140 at fit, done 230, signed 240, out at 250. */
    private static WrittenBus first() {
        return bus(1).onto(0, "strip")
                .done(60, "strip")
                .signed(70, "strip")
                .forward(100, "fit")
                .held(110, 1, Stops.WORK)
                .released(140, 1)
                .done(230, "fit")
                .signed(240, "fit")
                .out(250);
    }

    /** Strip from 100, over takt from 190, refused at 200, put right at 215, signed at 220; moved on at 260. */
    private static WrittenBus second() {
        return bus(2).onto(100, "strip")
                .called(120, 1, "strip", Help.MAINTENANCE, true)
                .answered(125, 1)
                .resolved(130, 1)
                .done(195, "strip")
                .refused(200, "strip")
                .done(215, "strip", "another")
                .signed(220, "strip")
                .forward(260, "fit");
    }

    @Test
    void time_by_state_of_each_station_follows_from_the_record() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");

        assertThat(minutes(found, 0))
                .isEqualTo(Map.of(
                        Doing.WORKING, 60 + 20 + 60.0,
                        Doing.AWAITING_SIGN_OFF, 10 + 5 + 5.0,
                        Doing.BLOCKED, 30 + 40.0,
                        Doing.DOWN, 10.0,
                        Doing.OVER_TAKT, 5 + 15.0,
                        Doing.STARVED, 40.0));
        assertThat(minutes(found, 1))
                .isEqualTo(Map.of(
                        Doing.STARVED, 100 + 10.0,
                        Doing.WORKING, 10 + 50 + 40.0,
                        Doing.HELD, 30.0,
                        Doing.OVER_TAKT, 40.0,
                        Doing.AWAITING_SIGN_OFF, 10.0,
                        Doing.BLOCKED, 10.0));
    }

    @Test
    void every_minute_waited_is_booked_to_its_cause() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");

        double waited = found.stations().stream()
                .mapToDouble(one -> one.minutes(Doing.BLOCKED) + one.minutes(Doing.STARVED))
                .sum();
        assertThat(found.lost().stream().mapToDouble(Lost::minutes).sum()).isCloseTo(waited, within(1e-9));
        assertThat(found.lost().get(found.lost().size() - 1).upTo()).isCloseTo(1, within(1e-12));
        // strip stands blocked 220 to 250 behind fit: over takt to 230, awaiting its signature to 240, then signed and
        // not moved
        assertThat(lost(found, "ST-fit", Doing.OVER_TAKT)).isEqualTo(10);
        assertThat(lost(found, "ST-fit", Doing.AWAITING_SIGN_OFF)).isEqualTo(10);
        assertThat(lost(found, "ST-fit", Doing.BLOCKED)).isEqualTo(10 + 10);
        // fit starves while strip works for 60 minutes and waits 10 for its signature, and 30 while the bus is not
        // moved on, and
        // 250 to 260 again; strip itself could move its bus on in the same 30 and 10
        assertThat(lost(found, "ST-strip", Doing.WORKING)).isEqualTo(60);
        assertThat(lost(found, "ST-strip", Doing.BLOCKED)).isEqualTo(30 + 30 + 10 + 10);
    }

    @Test
    void throughput_and_time_on_the_line_count_what_left_in_the_period() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");

        assertThat(found.throughput().finished()).containsExactly("WB-1");
        assertThat(found.throughput().leadMinutes()).containsExactly(250.0);
        assertThat(found.throughput().cycleMinutes()).isEmpty();
        assertThat(found.throughput().wip()).containsExactly(new Throughput.Aged("WB-2", 200));
        assertThat(found.planned().orElseThrow()).isCloseTo(300 / 90.0, within(1e-12));
        assertThat(found.throughput().little().meanNumber()).isCloseTo(450 / 300.0, within(1e-12));
        assertThat(found.throughput().little().exact()).isFalse();
    }

    @Test
    void cycle_time_is_the_mean_interval_between_leaving_vehicles() {
        Measures found = Measures.of(
                TwoStations.past(
                        0,
                        500,
                        ALWAYS,
                        LAYOUT,
                        bus(1).onto(0, "fit").out(100),
                        bus(2).onto(100, "fit").out(220),
                        bus(3).onto(220, "fit").out(400)),
                "");

        assertThat(found.throughput().cycleMinutes().orElseThrow()).isEqualTo(150);
        assertThat(found.throughput().finished()).containsExactly("WB-1", "WB-2", "WB-3");
        assertThat(found.throughput().leadMedian().orElseThrow()).isEqualTo(120);
    }

    @Test
    void a_vehicle_that_came_back_is_reworked_and_not_made() {
        Measures found = Measures.of(
                TwoStations.past(
                        0,
                        500,
                        ALWAYS,
                        LAYOUT,
                        bus(1).onto(0, "fit").out(100),
                        bus(2).cameBack(0).onto(100, "fit").out(220),
                        bus(3).onto(220, "fit").out(400)),
                "");

        assertThat(found.throughput().finished()).containsExactly("WB-1", "WB-3");
        assertThat(found.throughput().reworked()).containsExactly("WB-2");
        assertThat(found.throughput().cycleMinutes().orElseThrow()).isEqualTo(300);
        assertThat(found.throughput().leadMinutes()).containsExactly(100.0, 180.0);
        assertThat(found.throughput().little().vehicles())
                .as("it was there, and the law of Little counts it")
                .isEqualTo(3);
    }

    @Test
    void first_pass_and_rolled_yield_are_those_of_the_gates_signed_in_the_period() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");

        assertThat(found.yield().stages()).extracting(stage -> stage.vehicles()).containsExactly(2, 1);
        assertThat(found.indicator(Indicator.FIRST_PASS_YIELD).orElseThrow()).isEqualTo(1);
        Measures early = Measures.of(TwoStations.past(0, 100, ALWAYS, LAYOUT, first(), second()), "");
        assertThat(early.yield().stages()).hasSize(1);
    }

    @Test
    void indicators_rest_on_what_the_record_has() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");
        StationTimes strip = found.stations().get(0);

        assertThat(strip.productionMinutes()).isEqualTo(160);
        assertThat(strip.delayMinutes()).isEqualTo(20 + 10);
        assertThat(strip.indicator(Indicator.AVAILABILITY).orElseThrow()).isCloseTo(160 / 300.0, within(1e-12));
        assertThat(strip.indicator(Indicator.TECHNICAL_EFFICIENCY).orElseThrow())
                .isCloseTo(160 / 190.0, within(1e-12));
        assertThat(strip.indicator(Indicator.EFFECTIVENESS)).isEmpty();
        assertThat(found.indicator(Indicator.PRODUCTION_PROCESS_RATIO).orElseThrow())
                .isCloseTo((160 + 140) / 450.0, within(1e-12));
        // work at strip 160 for two signatures, at fit 140 for one: 80 and 140 against a takt of 90
        assertThat(found.balance().orElseThrow().efficiency()).isCloseTo(220 / 180.0, within(1e-12));
    }

    @Test
    void a_kind_that_was_not_there_has_no_throughput_but_stations_keep_their_time() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "TRUCK");

        assertThat(found.throughput().finished()).isEmpty();
        assertThat(found.yield().stages()).isEmpty();
        assertThat(found.calls()).isEmpty();
        assertThat(found.planned()).isEmpty();
        assertThat(found.stations().get(0).productionMinutes()).isEqualTo(160);
    }

    @Test
    void calls_wait_by_the_clock_until_somebody_answers() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, second()), "");

        assertThat(found.calls()).singleElement().satisfies(calls -> {
            assertThat(calls.help()).isEqualTo(Help.MAINTENANCE);
            assertThat(calls.calls()).isEqualTo(1);
            assertThat(calls.stoodStill()).isEqualTo(1);
            assertThat(calls.answerMedian().orElseThrow()).isEqualTo(5);
            assertThat(calls.settleMost().orElseThrow()).isEqualTo(10);
        });
        assertThat(Measures.of(TwoStations.past(200, 300, ALWAYS, LAYOUT, second()), "")
                        .calls())
                .isEmpty();
    }

    /** Monday 07:00 to 15:30 with half an hour's break, Tuesday a holiday: 480 minutes each on Monday and on Wednesday. */
    @Test
    void working_time_leaves_out_nights_breaks_and_holidays() {
        long threeDays = 3 * 24 * 60;
        WrittenBus bus = bus(1).onto(60, "strip").done(2 * 24 * 60 + 30, "strip");
        Measures found = Measures.of(TwoStations.past(0, threeDays, DAY, LAYOUT, bus), "");
        StationTimes strip = found.stations().get(0);

        assertThat(strip.workingMinutes()).isEqualTo(960);
        assertThat(found.throughput().workingMinutes()).isEqualTo(960);
        assertThat(strip.minutes(Doing.STARVED)).isEqualTo(60);
        assertThat(strip.minutes(Doing.WORKING)).isEqualTo(90);
        assertThat(strip.minutes(Doing.OVER_TAKT)).isEqualTo(810);
        assertThat(found.throughput().wip()).containsExactly(new Throughput.Aged("WB-1", 900));
    }

    @Test
    void a_stretch_of_nothing_is_told_without_a_fault() {
        Measures found = Measures.of(TwoStations.past(0, 0, ALWAYS, LAYOUT), "");

        assertThat(found.any()).isFalse();
        assertThat(found.lost()).isEmpty();
        assertThat(found.bottleneckAtEnd()).isEmpty();
        assertThat(Measures.of(TwoStations.past(0, 100, ALWAYS, TwoStations.layout()), "")
                        .stations())
                .isEmpty();
    }

    @Test
    void the_station_that_works_longest_without_waiting_is_the_bottleneck() {
        Measures found = Measures.of(TwoStations.past(0, 300, ALWAYS, LAYOUT, first(), second()), "");

        assertThat(found.bottleneckAtEnd()).hasValue(1);
        double all = found.bottleneck().shiftingMinutes()
                + found.stations().stream()
                        .mapToDouble(StationTimes::soleMinutes)
                        .sum();
        assertThat(all).isLessThanOrEqualTo(300);
    }

    private static Map<Doing, Double> minutes(Measures found, int station) {
        return Arrays.stream(Doing.values())
                .filter(doing -> found.stations().get(station).minutes(doing) > 0)
                .collect(Collectors.toMap(
                        doing -> doing, doing -> found.stations().get(station).minutes(doing)));
    }

    private static double lost(Measures found, String station, Doing doing) {
        return found.lost().stream()
                .filter(one -> one.station()
                                .filter(known -> known.code().equals(station))
                                .isPresent()
                        && one.doing() == doing)
                .mapToDouble(Lost::minutes)
                .sum();
    }

    private static WrittenBus bus(int number) {
        return new WrittenBus("WB-" + number, "strip", "fit");
    }
}
