package wainbook.quality.chart.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.quality.reading.Reading;

/** A reading of a chart as one line of a spreadsheet. It names no person. */
final class ReadingRow {

    private ReadingRow() {}

    static List<String> cells(ChartView.Row row) {
        Reading reading = row.reading();
        return List.of(
                String.valueOf(row.number()),
                reading.at().toString(),
                reading.order(),
                reading.vehicleKind(),
                String.valueOf(reading.number()),
                String.valueOf(reading.place()),
                reading.value().toPlainString(),
                reading.unit(),
                text(reading.lower()),
                text(reading.upper()),
                reading.failed() ? "FAIL" : "PASS",
                reading.instrument().orElse(""),
                row.scaled().replace('−', '-'),
                row.range(),
                row.signs());
    }

    private static String text(Optional<BigDecimal> limit) {
        return limit.map(BigDecimal::toPlainString).orElse("");
    }
}
