package wainbook.quality.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.chart.ItemChart.NoIndex;
import wainbook.quality.reading.Reading;

/** What a chart shows, what it holds back, and what it raises. Values go up and down by hand, so that no chance is in them. */
class ItemChartTest {

    /** No rule fires on these: they cross the centre, 100, at every second step, between 98.5 and 101.5. */
    private static final double[] CALM = {100.5, 99, 101.5, 98.5, 100, 99.5, 101, 99, 100.5, 98.5};

    @Test
    void below_25_values_limits_are_provisional_and_there_is_no_index() {
        ItemChart chart = calm(24).chart();

        assertThat(chart.held()).isFalse();
        assertThat(chart.capability()).isEmpty();
        assertThat(chart.noIndex()).contains(NoIndex.TOO_FEW);
        assertThat(Standing.of(calm(24).vehicle(200).vehicle(0.5).chart(), Optional.empty()))
                .as("from the 25th value on it may be raised")
                .isPresent();
        assertThat(Standing.of(calm(20).vehicle(200).chart(), Optional.empty())).isEmpty();
    }

    @Test
    void limits_come_from_the_first_thirty_values_and_are_held() {
        ItemChart thirty = calm(30).chart();
        ItemChart more = calm(30).vehicle(140).vehicle(141).chart();

        assertThat(more.limits().orElseThrow().centre())
                .isEqualTo(thirty.limits().orElseThrow().centre());
        assertThat(more.limitsFrom()).isEqualTo(30);
    }

    @Test
    void a_chart_in_control_gives_its_index_with_n_and_interval() {
        var found = calm(60).chart().capability().orElseThrow().results();

        assertThat(found.n()).isEqualTo(60);
        assertThat(found.ppk().orElseThrow())
                .isBetween(found.ppkLow().orElseThrow(), found.ppkHigh().orElseThrow());
    }

    @Test
    void after_a_signal_an_index_waits_for_25_values_and_speaks_of_those_alone() {
        ItemChart soon = calm(30).vehicle(109).and(calm(24)).chart();
        ItemChart later = calm(30).vehicle(109).and(calm(40)).chart();

        assertThat(soon.signals()).extracting(Signal::sign).contains(Sign.BEYOND);
        assertThat(soon.noIndex()).contains(NoIndex.NOT_STEADY);
        assertThat(later.capability().orElseThrow().results().n()).isLessThan(41);
    }

    @Test
    void voided_readings_are_left_out_and_counted() {
        ItemChart chart = calm(30).voided(500).chart();

        assertThat(chart.n()).isEqualTo(30);
        assertThat(chart.voided()).isEqualTo(1);
        assertThat(chart.signals()).isEmpty();
    }

    @Test
    void unlike_limits_are_drawn_in_percent_of_half_the_tolerance() {
        List<Reading> mixed =
                new ArrayList<>(new Ticked("108", "132").vehicle(121.4).readings());
        mixed.addAll(new Ticked("54", "66").vehicle(59.2).readings());
        mixed.addAll(new Ticked("21.25", "28.75").vehicle(25.9).readings());
        ItemChart chart = ItemChart.of(new Charted(Charted.Sort.FAMILY, "torque-indicating"), mixed);

        assertThat(chart.scale()).isEqualTo(Scale.OF_TOLERANCE);
        assertThat(chart.values().get(0)).isCloseTo(11.6667, within(1e-4));
        assertThat(chart.values().get(1)).isCloseTo(-13.3333, within(1e-4));
        assertThat(chart.values().get(2)).isCloseTo(24.0, within(1e-9));
        assertThat(chart.lower()).contains(-100.0);
    }

    @Test
    void alike_limits_are_drawn_as_read() {
        assertThat(calm(10).chart().scale()).isEqualTo(Scale.AS_READ);
    }

    @Test
    void a_signal_at_a_new_vehicle_stands_until_it_is_settled() {
        ItemChart chart = calm(30).vehicle(109).chart();
        Standing standing = Standing.of(chart, Optional.empty()).orElseThrow();

        assertThat(standing.at().value().intValue()).isEqualTo(109);
        assertThat(Standing.of(chart, Optional.of(standing.newest()))).isEmpty();
    }

    @Test
    void a_signal_after_the_settled_one_stands_anew() {
        Ticked readings = calm(30).vehicle(109);
        Place settled =
                Standing.of(readings.chart(), Optional.empty()).orElseThrow().newest();

        assertThat(Standing.of(readings.vehicle(91).chart(), Optional.of(settled))
                        .orElseThrow()
                        .at()
                        .value())
                .isEqualByComparingTo("91");
    }

    @Test
    void three_vehicles_without_another_signal_end_it() {
        Ticked readings = calm(30).vehicle(105.5);
        assertThat(Standing.of(readings.chart(), Optional.empty())).isPresent();
        assertThat(Standing.of(readings.vehicle(101).vehicle(99).vehicle(100).chart(), Optional.empty()))
                .isEmpty();
    }

    @Test
    void a_steady_climb_is_forecast_to_reach_the_limit_before_it_does() {
        Ticked readings = calm(30);
        for (int i = 0; i < 12; i++) {
            readings.vehicle(100 + 0.6 * i + (i % 2 == 0 ? 0.2 : -0.2));
        }
        ItemChart chart = readings.chart();

        assertThat(chart.readings()).noneMatch(Reading::failed);
        Forecast forecast = chart.forecast().orElseThrow();
        assertThat(forecast.vehicles()).as("(110 − 106.6) / 0.6, rounded up").isBetween(5, 7);
        assertThat(Standing.of(chart, Optional.empty()).orElseThrow().sign()).isEqualTo(Sign.FORECAST);
    }

    @Test
    void a_climb_away_from_the_limit_and_calm_values_forecast_nothing() {
        assertThat(calm(40).chart().forecast()).isEmpty();
    }

    /** What the page says of false alarms; a hundred charts of 200 values of the normal law, limits from the first 30, seeded. */
    @Test
    void where_nothing_changes_about_four_values_in_a_hundred_signal() {
        long signalled = 0;
        for (long seed = 1; seed <= 100; seed++) {
            var random = new Random(seed);
            Ticked readings = new Ticked("90", "110");
            for (int i = 0; i < 200; i++) {
                readings.vehicle(100 + random.nextGaussian());
            }
            ItemChart chart = readings.chart();
            signalled += chart.signals().stream().map(Signal::point).distinct().count();
        }
        assertThat(signalled / 20_000.0).isBetween(0.03, 0.05);
    }

    private static Ticked calm(int n) {
        Ticked readings = new Ticked("90", "110");
        for (int i = 0; i < n; i++) {
            readings.vehicle(CALM[i % CALM.length]);
        }
        return readings;
    }
}
