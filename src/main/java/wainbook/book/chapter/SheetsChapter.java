package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import wainbook.book.EntryLine;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Grid.Column;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.gate.Gate;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.TakenFromPaper;

/** The check sheet of each stage, in the revision it was worked by, with all that is on record of each item. */
final class SheetsChapter {

    private SheetsChapter() {}

    static Chapter of(Material material) {
        var text = new Manuscript("sheets", Words.of("printed.sheets")).text(Words.of("printed.sheetsIntro"));
        if (material.stages().isEmpty()) {
            text.quiet(Words.of("printed.noSheets"));
        }
        var rows = new RecordRows(material.vehicle().record(), material.formats());
        for (StageRecord stage : material.stages()) {
            text.part(stage.stage(), material.names().stage(stage.stage()))
                    .text(sentence(material, stage))
                    .grid(new Grid(columns(), rows(stage, rows)), Words.of("printed.noSheets"));
        }
        return text.end();
    }

    private static String sentence(Material material, StageRecord stage) {
        String sheet = Words.of(
                "printed.byRevision", stage.binding().sheet(), stage.binding().revision());
        Gate gate = Gate.of(material.history(), stage);
        String standing = Words.of("book.gate." + gate.standing().name());
        return sheet + " "
                + gate.refused()
                        .or(gate::signed)
                        .map(entry -> Words.of(
                                "printed.gateBy",
                                standing,
                                entry.moment().who(),
                                material.formats().moment(entry.moment().at()),
                                entry.number()))
                        .orElseGet(() -> Words.of("printed.gateIs", standing));
    }

    private static List<Column> columns() {
        return List.of(
                Grid.column(Words.of("printed.item"), 7),
                Grid.column(Words.of("printed.said"), 6),
                Grid.column(Words.of("printed.came"), 2),
                Grid.column(Words.of("printed.whenAndWho"), 3),
                Grid.column(Words.of("printed.entry"), 2));
    }

    private static List<Row> rows(StageRecord stage, RecordRows entries) {
        var rows = new ArrayList<Row>();
        for (ItemState item : stage.items()) {
            Cell title = Cell.of(item.item().title())
                    .and(
                            Words.of(
                                    "printed.itemStanding",
                                    item.key(),
                                    Words.of("station.status." + item.status().name())),
                            "quiet small");
            List<EntryLine> lines = item.entries().stream()
                    .filter(entry -> shown(item, entry))
                    .map(entry -> entries.line(entry.number()))
                    .filter(Objects::nonNull)
                    .flatMap(line -> Stream.concat(Stream.of(line), line.corrections().stream()))
                    .toList();
            if (lines.isEmpty()) {
                rows.add(Row.of(
                        title,
                        Cell.of(Words.of("printed.nothingRecorded"), "quiet"),
                        Cell.of(""),
                        Cell.of(""),
                        Cell.of("")));
            }
            for (EntryLine line : lines) {
                boolean titled = !line.what().equals(item.item().title());
                rows.add(row(title, line, titled, entries));
                title = Cell.of("");
            }
        }
        return rows;
    }

    private static Row row(Cell title, EntryLine line, boolean titled, RecordRows entries) {
        return Row.of(
                title,
                entries.said(line, titled),
                entries.came(line),
                entries.when(line).and(line.who(), "small"),
                Cell.of(String.valueOf(line.number()), "fixed").and(line.shortHash(), "fixed"));
    }

    /** What voids another stands under it; paper is told with the entry that was taken from it. */
    private static boolean shown(ItemState item, Entry entry) {
        boolean underAnother = entry.saying() instanceof wainbook.station.StationSaying.Voided said
                && item.entries().stream().anyMatch(other -> other.id().equals(said.entry()));
        return !underAnother && !(entry.saying() instanceof TakenFromPaper);
    }
}
