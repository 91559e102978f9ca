package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import wainbook.book.EntryLine;
import wainbook.book.VehicleRecord.Fold;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.page.Words;

/** Chapters that are entries in the order of time: the whole record, and the parts of it that are read by themselves. */
final class LinesChapter {

    private static final Set<String> AROUND_VOLTAGE = Set.of("isolation", "permit", "safety");

    private LinesChapter() {}

    static Chapter isolation(Material material) {
        return new Manuscript("isolation", Words.of("printed.isolation"))
                .text(Words.of("printed.isolationIntro"))
                .grid(
                        grid(material, false, line -> AROUND_VOLTAGE.contains(line.room())),
                        Words.of("printed.noIsolation"))
                .end();
    }

    static Chapter record(Material material) {
        return new Manuscript("record", Words.of("printed.record"))
                .text(Words.of("printed.recordIntro", material.stored().number()))
                .grid(grid(material, true, line -> true), Words.of("printed.noRecord"))
                .end();
    }

    private static Grid grid(Material material, boolean named, Predicate<EntryLine> shown) {
        var rows = new ArrayList<Row>();
        var entries = new RecordRows(material.vehicle().record(), material.formats());
        for (Fold fold : material.vehicle().record().folds()) {
            List<Row> within = fold.lines().stream()
                    .filter(shown)
                    .flatMap(line -> entries.of(line, named).stream())
                    .toList();
            if (!within.isEmpty()) {
                rows.add(Row.head(Cell.of(fold.title())));
                rows.addAll(within);
            }
        }
        return new Grid(RecordRows.columns(), rows);
    }
}
