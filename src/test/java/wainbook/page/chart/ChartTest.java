package wainbook.page.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartTest {

    @ParameterizedTest
    @CsvSource({
        "0, 10, 5, '0 2 4 6 8 10'",
        "-3.2, 4.1, 5, '-2 0 2 4'",
        "0.0021, 0.0089, 5, '0.004 0.006 0.008'",
        "49, 51, 5, '49.0 49.5 50.0 50.5 51.0'"
    })
    void an_axis_has_round_figures(double least, double most, int about, String ticks) {
        assertThat(Ticks.within(least, most, about).stream().map(BigDecimal::doubleValue))
                .containsExactlyElementsOf(
                        List.of(ticks.split(" ")).stream().map(Double::valueOf).toList());
    }

    @Test
    void higher_values_stand_higher_and_everything_stands_inside() {
        Chart chart = chart(1, 3, 2);
        List<Double> ys =
                chart.dots().stream().map(dot -> Double.valueOf(dot.y())).toList();
        assertThat(ys.get(1)).isLessThan(ys.get(2)).isLessThan(ys.get(0));
        assertThat(ys).allMatch(y -> y > 0 && y < Chart.HEIGHT);
        assertThat(Double.valueOf(chart.across().get(0).y()))
                .isLessThan(ys.get(1))
                .isPositive();
    }

    @Test
    void values_that_are_all_one_stand_in_the_middle() {
        var flat = new Chart("t", "d", "N·m", List.of(mark(0, 0), mark(1, 0)), List.of(), List.of());
        assertThat(flat.dots().get(0).y()).isEqualTo(flat.dots().get(1).y());
        assertThat(flat.ticks()).isNotEmpty();
    }

    @Test
    void many_values_are_labelled_here_and_there() {
        var many = new Chart(
                "t",
                "d",
                "N·m",
                IntStream.range(0, 100).mapToObj(i -> mark(i, i)).toList(),
                List.of(),
                List.of());
        assertThat(many.places()).hasSizeBetween(2, 8);
        assertThat(many.dots()).hasSize(100);
    }

    @Test
    void a_chart_of_nothing_is_a_mistake_of_the_page() {
        assertThatThrownBy(() -> new Chart("t", "d", "N·m", List.of(), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Chart chart(double... values) {
        return new Chart(
                "t",
                "d",
                "N·m",
                IntStream.range(0, values.length)
                        .mapToObj(i -> mark(i, values[i]))
                        .toList(),
                List.of(new Chart.Level(Chart.Sort.LIMIT, "upper limit", 4)),
                List.of());
    }

    private static Chart.Mark mark(int at, double value) {
        return new Chart.Mark(at, String.valueOf(at), value, false);
    }
}
