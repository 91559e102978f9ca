package wainbook.order.specification.page;

import java.util.List;
import java.util.function.ToDoubleFunction;
import wainbook.page.Words;
import wainbook.page.chart.Chart;

/** Packs against range, and packs against payload: the more of one, the less of the other. */
public final class PackCharts {

    private PackCharts() {}

    static Chart range(List<RowView> rows, double worstKm) {
        return new Chart(
                Words.of("order.chartRange"),
                Words.of("order.chartRangeText"),
                "km",
                rows.stream()
                        .map(row -> mark(row, row.row().packs().rangeAtEndKm()))
                        .toList(),
                List.of(new Chart.Level(Chart.Sort.LIMIT, Words.of("order.chartDay"), Math.round(worstKm))),
                List.of(
                        line(true, rows, row -> row.row().packs().rangeNewKm()),
                        line(false, rows, row -> row.row().packs().rangeColdAtEndKm())));
    }

    private static Chart.Line line(boolean edge, List<RowView> rows, ToDoubleFunction<RowView> km) {
        return new Chart.Line(
                edge,
                rows.stream()
                        .map(row -> new Chart.Point(row.packs(), km.applyAsDouble(row)))
                        .toList());
    }

    static Chart payload(List<RowView> rows, double wantedKg) {
        return new Chart(
                Words.of("order.chartPayload"),
                Words.of("order.chartPayloadText"),
                "kg",
                rows.stream()
                        .map(row -> mark(row, row.row().packs().payload().kg()))
                        .toList(),
                List.of(new Chart.Level(Chart.Sort.LIMIT, Words.of("order.chartWanted"), Math.round(wantedKg))),
                List.of());
    }

    private static Chart.Mark mark(RowView row, double value) {
        return new Chart.Mark(
                row.packs(), Words.of("order.packCount", row.packs()), Math.round(value), !row.feasible());
    }
}
