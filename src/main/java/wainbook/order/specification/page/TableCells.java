package wainbook.order.specification.page;

import java.util.List;
import java.util.stream.Collectors;
import wainbook.page.Words;

/** A row of the table as a spreadsheet gets it. */
final class TableCells {

    private TableCells() {}

    static List<String> of(RowView row) {
        return List.of(
                "" + row.packs(),
                Words.of(row.feasible() ? "order.willDo" : "order.willNotDo"),
                String.join(" ", row.briefly()),
                row.kwhPerKm(),
                row.rangeNew(),
                row.rangeAtEnd(),
                row.oddsNew(),
                row.oddsAtEnd(),
                row.payload(),
                row.boundBy(),
                row.axles().stream().map(RowView.AxleCell::empty).collect(Collectors.joining(" / ")),
                row.axles().stream().map(RowView.AxleCell::laden).collect(Collectors.joining(" / ")),
                row.worstFront(),
                row.lifted(),
                row.start(),
                row.climb(),
                row.charge(),
                row.rangeColdNew(),
                row.rangeColdAtEnd(),
                row.life()
                        .map(life ->
                                life.lastMet().isPresent() ? "" + life.lastMet().getAsInt() : "")
                        .orElse(""),
                row.life()
                        .map(life ->
                                life.endsIn().isPresent() ? "" + life.endsIn().getAsInt() : "")
                        .orElse(""));
    }
}
