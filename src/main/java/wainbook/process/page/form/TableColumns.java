package wainbook.process.page.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.process.sheet.Ask.Table.Column;
import wainbook.process.sheet.Limits;

/**
 * The columns of a table as lines of text, ten cells parted by bars: title, unit, then lower, upper, strict and source of the
 * works' limits and of the legal ones. Cells at the end may be left out.
 */
final class TableColumns {

    private static final int CELLS = 10;
    private static final String NUMBER = "-?\\d{1,12}([.,]\\d{1,9})?";
    private static final String STRICT = "strict";

    private TableColumns() {}

    static String typed(List<Column> columns) {
        return columns.stream().map(TableColumns::line).collect(Collectors.joining("\n"));
    }

    private static String line(Column column) {
        String all = Stream.of(Stream.of(column.title(), column.unit()), cells(column.works()), cells(column.legal()))
                .flatMap(cells -> cells)
                .collect(Collectors.joining(" | "));
        return all.replaceAll("[ |]+$", "");
    }

    private static Stream<String> cells(Optional<Limits> limits) {
        return Stream.of(
                limits.flatMap(Limits::lower).map(BigDecimal::toPlainString).orElse(""),
                limits.flatMap(Limits::upper).map(BigDecimal::toPlainString).orElse(""),
                limits.filter(Limits::strict).map(strict -> STRICT).orElse(""),
                limits.flatMap(Limits::source).orElse(""));
    }

    static List<Column> of(Typed typed) {
        var columns = new ArrayList<Column>();
        for (String line : typed.linesDemanded("columns")) {
            String[] cells = Stream.concat(
                            Stream.of(line.split("\\|", -1)).map(String::strip), Stream.generate(() -> ""))
                    .limit(CELLS)
                    .toArray(String[]::new);
            boolean fits = !cells[0].isEmpty()
                    && cells[0].length() <= 200
                    && line.split("\\|", -1).length <= CELLS
                    && Stream.of(cells[2], cells[3], cells[6], cells[7])
                            .allMatch(cell -> cell.isEmpty() || cell.matches(NUMBER))
                    && Stream.of(cells[4], cells[8]).allMatch(cell -> cell.isEmpty() || cell.equals(STRICT));
            if (!fits) {
                typed.wrong("columns", "process.fieldColumns", line);
                return List.of(new Column("x", "", Optional.empty(), Optional.empty()));
            }
            columns.add(new Column(cells[0], cells[1], limits(cells, 2), limits(cells, 6)));
        }
        return columns;
    }

    private static Optional<Limits> limits(String[] cells, int from) {
        Optional<BigDecimal> lower = number(cells[from]);
        Optional<BigDecimal> upper = number(cells[from + 1]);
        if (lower.isEmpty() && upper.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> source = Optional.of(cells[from + 3]).filter(text -> !text.isEmpty());
        return Optional.of(new Limits(lower, upper, cells[from + 2].equals(STRICT), source));
    }

    private static Optional<BigDecimal> number(String cell) {
        return Optional.of(cell).filter(text -> !text.isEmpty()).map(text -> new BigDecimal(text.replace(',', '.')));
    }
}
