package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.flow.status.Doing.AWAITING_SIGN_OFF;
import static wainbook.engineering.flow.status.Doing.BLOCKED;
import static wainbook.engineering.flow.status.Doing.HELD;
import static wainbook.engineering.flow.status.Doing.OVER_TAKT;
import static wainbook.engineering.flow.status.Doing.STARVED;
import static wainbook.engineering.flow.status.Doing.WORKING;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.status.Bottleneck;
import wainbook.engineering.flow.status.Bottleneck.Active;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.engineering.flow.status.LineBalance;
import wainbook.engineering.flow.status.LostMinutes;
import wainbook.engineering.flow.status.Timeline;
import wainbook.engineering.flow.status.Timeline.Stretch;
import wainbook.engineering.flow.status.Walk;

/**
 * Status, causes, bottleneck and indicators against examples worked by hand. Active periods by C. Roser (2014, opening part read;
 * sole and shifting from memory); names of the indicators from an open ontology of ISO 22400-2, the standard itself not read; line
 * efficiency and smoothness as public lecture notes have them.
 */
class LineMeasuresTest {

    /** Takt 60, no places, gates signed 5 minutes after the work; the vehicle at the third station is held from 40 to 130. */
    private static final Timeline LINE = Timeline.row(List.of(
            station("0 W 58 A 63 B 150 W 200 A 205"),
            station("0 W 52 A 57 B 150 W 200 A 205"),
            station("0 W 40 H 130 O 145 A 150 W 200 A 205"),
            station("0 W 50 A 55 B 60 S 150 W 200 A 205"),
            station("0 W 55 A 60 W 115 A 120 S 205")));

    @ParameterizedTest
    @CsvSource({
        "30, 'W, W, W, W, W', '., ., ., ., .'",
        "56, 'W, A, H, B, A', '., ., ., 4, .'",
        "59, 'A, B, H, B, A', '., 2, ., 4, .'",
        "100, 'B, B, H, S, W', '2, 2, ., 2, .'",
        "125, 'B, B, H, S, S', '2, 2, ., 2, 2'",
        "140, 'B, B, O, S, S', '2, 2, ., 2, 2'",
        "160, 'W, W, W, W, S', '., ., ., ., 3'"
    })
    void states_and_causes_at_seven_instants(double minute, String states, String causes) {
        List<Doing> line = LINE.at(minute);

        assertThat(line)
                .containsExactlyElementsOf(Arrays.stream(states.split(", "))
                        .map(LineMeasuresTest::doing)
                        .toList());
        String[] expected = causes.split(", ");
        for (int station = 0; station < 5; station++) {
            String found = Walk.cause(line, station).stream()
                    .mapToObj(String::valueOf)
                    .findFirst()
                    .orElse(".");
            assertThat(found).isEqualTo(expected[station]);
        }
    }

    @Test
    void lost_minutes_by_cause() {
        assertThat(LostMinutes.of(LINE))
                .containsExactlyInAnyOrder(
                        new LostMinutes(2, HELD, 220),
                        new LostMinutes(2, OVER_TAKT, 60),
                        new LostMinutes(2, AWAITING_SIGN_OFF, 20),
                        new LostMinutes(3, WORKING, 50),
                        new LostMinutes(3, AWAITING_SIGN_OFF, 5),
                        new LostMinutes(4, AWAITING_SIGN_OFF, 5));
        assertThat(LostMinutes.of(LINE).get(0)).isEqualTo(new LostMinutes(2, HELD, 220));
    }

    @Test
    void a_line_that_starves_from_the_start_waits_for_the_release() {
        assertThat(Walk.cause(List.of(STARVED, STARVED, WORKING), 1)).hasValue(Walk.RELEASE);
        assertThat(Walk.cause(List.of(WORKING, STARVED), 1)).hasValue(0);
    }

    /** No minute is lost twice or not at all: what is booked is what was waited. */
    @Test
    void every_minute_waited_is_booked_once() {
        var random = new SplittableRandom(5);
        List<Doing> all = List.of(Doing.values());
        for (int i = 0; i < 100; i++) {
            List<List<Stretch>> stations = new ArrayList<>();
            double waited = 0;
            for (int station = 0; station < 6; station++) {
                List<Stretch> stretches = new ArrayList<>();
                for (double from = 0; from < 400; ) {
                    double to = Math.min(400, from + random.nextInt(1, 90));
                    Doing doing = all.get(random.nextInt(all.size()));
                    waited += doing.waits() ? to - from : 0;
                    stretches.add(Stretch.ofMinutes(from, to, doing));
                    from = to;
                }
                stations.add(stretches);
            }
            assertThat(LostMinutes.of(Timeline.row(stations)).stream()
                            .mapToDouble(LostMinutes::minutes)
                            .sum())
                    .isCloseTo(waited, within(1e-9));
        }
    }

    @Test
    void bottleneck_by_active_periods() {
        var found = Bottleneck.ofPeriods(List.of(
                List.of(new Active(0, 34), new Active(62, 104)),
                List.of(new Active(30, 90), new Active(93, 104)),
                List.of(new Active(5, 15), new Active(40, 55), new Active(70, 80))));

        assertThat(found.soleMinutes()).containsExactly(44.0, 28.0, 0.0);
        assertThat(found.shiftingMinutes()).isEqualTo(32);
        assertThat(found.moments())
                .containsExactly(
                        new Bottleneck.Moment(0, 0, 30),
                        new Bottleneck.Moment(1, 30, 90),
                        new Bottleneck.Moment(0, 90, 104));
    }

    @Test
    void the_station_with_the_held_vehicle_is_the_bottleneck_of_the_worked_line() {
        var found = Bottleneck.of(LINE);

        assertThat(Collections.max(found.soleMinutes()))
                .isEqualTo(found.soleMinutes().get(2));
        assertThat(found.moments()).containsExactly(new Bottleneck.Moment(2, 0, 205));
    }

    /** Exact shares of three stations of exponential work at rates 1, 0.8, 1: the middle one. */
    @Test
    void bottleneck_by_the_turning_point() {
        assertThat(Bottleneck.turningPoint(List.of(0.486404, 0.191196, 0.0), List.of(0.0, 0.166809, 0.486404)))
                .hasValue(1);
        assertThat(Bottleneck.turningPoint(List.of(0.4, 0.1, 0.0), List.of(0.0, 0.2, 0.05)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "AVAILABILITY, 0.8",
        "ALLOCATION_EFFICIENCY, 0.903225806",
        "UTILIZATION_EFFICIENCY, 0.885714286",
        "EFFECTIVENESS, 0.946236559",
        "QUALITY_RATIO, 0.95",
        "OEE_INDEX, 0.719139785",
        "TECHNICAL_EFFICIENCY, 0.925373134",
        "FIRST_PASS_YIELD, 0.85",
        "REWORK_RATIO, 0.15"
    })
    void indicators_of_a_period(Indicator indicator, double value) {
        var minutes = new Indicator.Minutes(2325, 2100, 1860, 150, 88, Double.NaN);
        var quantities = new Indicator.Quantities(20, 19, 3, 20, 17);

        assertThat(indicator.of(minutes, quantities).orElseThrow()).isCloseTo(value, within(1e-9));
        assertThat(indicator.of(new Indicator.Minutes(0, 0, 0, 0, 0, 0), new Indicator.Quantities(0, 0, 0, 0, 0)))
                .isEmpty();
    }

    /** Jackson's eleven tasks on five stations with a cycle of 10, the smoothest of the four ways. */
    @Test
    void balance_of_a_line() {
        var found = LineBalance.of(List.of(8.0, 9.0, 10.0, 10.0, 9.0), 10);

        assertThat(found.efficiency()).isCloseTo(0.92, within(1e-12));
        assertThat(found.delay()).isCloseTo(0.08, within(1e-12));
        assertThat(found.idleMinutes()).isCloseTo(4, within(1e-12));
        assertThat(found.smoothness()).isCloseTo(2.449489743, within(1e-9));
    }

    /** Minutes and what happens between them. */
    private static List<Stretch> station(String told) {
        String[] parts = told.split(" ");
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i + 2 < parts.length; i += 2) {
            stretches.add(Stretch.ofMinutes(
                    Double.parseDouble(parts[i]), Double.parseDouble(parts[i + 2]), doing(parts[i + 1])));
        }
        return stretches;
    }

    private static Doing doing(String letter) {
        return switch (letter) {
            case "W" -> WORKING;
            case "O" -> OVER_TAKT;
            case "A" -> AWAITING_SIGN_OFF;
            case "B" -> BLOCKED;
            case "S" -> STARVED;
            default -> HELD;
        };
    }
}
