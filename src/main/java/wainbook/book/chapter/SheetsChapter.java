package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import wainbook.book.EntryLine;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.gate.Gate;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.WaitBegun;

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
                    .grid(new Grid(RecordRows.columns(), rows(stage, rows)), Words.of("printed.noSheets"));
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

    private static List<Row> rows(StageRecord stage, RecordRows entries) {
        var rows = new ArrayList<Row>();
        for (ItemState item : stage.items()) {
            rows.add(Row.head(Cell.of(Words.of(
                    "printed.itemStanding",
                    item.item().title(),
                    item.key(),
                    Words.of("station.status." + item.status().name())))));
            for (Entry entry : item.entries()) {
                EntryLine line = entries.line(entry.number());
                if (line != null && shown(item, entry)) {
                    boolean result = entry.saying() instanceof Result || entry.saying() instanceof WaitBegun;
                    rows.addAll(entries.of(line, false, !result));
                }
            }
        }
        return rows;
    }

    /** What voids another stands under it; paper is told with the entry that was taken from it. */
    private static boolean shown(ItemState item, Entry entry) {
        boolean underAnother = entry.saying() instanceof wainbook.station.StationSaying.Voided said
                && item.entries().stream().anyMatch(other -> other.id().equals(said.entry()));
        return !underAnother && !(entry.saying() instanceof TakenFromPaper);
    }
}
