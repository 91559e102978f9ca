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
    List<Row> of(EntryLine line, boolean named) {
        var rows = new ArrayList<Row>();
        rows.add(row(line, named));
        line.corrections().forEach(later -> rows.add(row(later, named)));
        return rows;
    }

    private Row row(EntryLine line, boolean named) {
        Row row = Row.of(when(line), who(line), said(line, true), came(line), entry(line));
        return named ? row.named(line.anchor()) : row;
    }

    Cell when(EntryLine line) {
        return Cell.of(formats.moment(line.at()), "small nowrap");
    }

    Cell who(EntryLine line) {
        return Cell.of(line.who());
    }

    /** @param titled whether what it is about is said too */
    Cell said(EntryLine line, boolean titled) {
        String text = line.value().isEmpty() ? line.what() : line.value();
        if (titled && !line.value().isEmpty()) {
            text = Words.of("printed.saidAndValue", line.what(), line.value());
        }
        Cell cell = Cell.of(text).and(grounds(line), "quiet small");
        return line.corrected() ? cell.struck() : cell;
    }

    Cell came(EntryLine line) {
        Cell cell = Cell.of(line.verdict(), line.judged() && !line.pass() ? "danger" : "");
        return line.corrected() ? cell.struck().and(Words.of("printed.void"), "danger") : cell;
    }

    static Cell entry(EntryLine line) {
        return Cell.of(line.number() + " · " + line.shortHash(), "fixed");
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
