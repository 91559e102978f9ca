package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.book.EntryLine;
import wainbook.book.VehicleRecord;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Grid.Column;
import wainbook.book.print.Row;
import wainbook.page.Formats;
import wainbook.page.Words;

/** Entries as rows: when, who, what it says, what it came to, and its place in the record. */
final class RecordRows {

    private final Formats formats;
    private final Map<Long, EntryLine> byNumber = new HashMap<>();

    RecordRows(VehicleRecord record, Formats formats) {
        this.formats = formats;
        record.folds().stream().flatMap(fold -> fold.lines().stream()).forEach(line -> {
            byNumber.put(line.number(), line);
            line.corrections().forEach(later -> byNumber.put(later.number(), later));
        });
    }

    static List<Column> columns() {
        return List.of(
                Grid.column(Words.of("printed.when"), 3),
                Grid.column(Words.of("printed.who"), 2),
                Grid.column(Words.of("printed.said"), 10),
                Grid.column(Words.of("printed.came"), 2),
                Grid.column(Words.of("printed.entry"), 3));
    }

    /** The line of an entry, whatever it stands under. */
    EntryLine line(long number) {
        return byNumber.get(number);
    }

    /** An entry and under it what voided it. What does not count is struck through and said to be void. */
    List<Row> of(EntryLine line, boolean named, boolean titled) {
        var rows = new ArrayList<Row>();
        Row row = row(line, named, titled);
        rows.add(line.corrected() ? row.struck() : row);
        line.corrections().forEach(later -> rows.add(row(later, named, true)));
        return rows;
    }

    private Row row(EntryLine line, boolean named, boolean titled) {
        Cell said =
                titled || line.value().isEmpty() ? Cell.of(line.what()).and(line.value(), "") : Cell.of(line.value());
        Cell verdict = Cell.of(line.verdict(), line.judged() && !line.pass() ? "danger" : "");
        Row row = Row.of(
                Cell.of(formats.moment(line.at())),
                Cell.of(line.who()),
                said.and(grounds(line), "quiet small"),
                line.corrected() ? verdict.and(Words.of("printed.void"), "danger") : verdict,
                Cell.of(line.number() + " · " + line.shortHash(), "fixed"));
        return named ? row.named(line.anchor()) : row;
    }

    private static String grounds(EntryLine line) {
        return Stream.concat(
                        line.grounds().used().stream()
                                .map(used -> Words.of(
                                        "printed.withInstrument",
                                        used.instrument(),
                                        line.grounds().due())),
                        line.grounds().parts().stream())
                .reduce((former, latter) -> former + "; " + latter)
                .orElse("");
    }
}
