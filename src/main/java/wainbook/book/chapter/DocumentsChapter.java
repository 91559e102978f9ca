package wainbook.book.chapter;

import java.util.List;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentLine;
import wainbook.handover.document.DocumentSet;
import wainbook.page.Formats;
import wainbook.page.Words;

/** What every rule said for this vehicle, needed or not and why, and how its document stands. */
final class DocumentsChapter {

    private DocumentsChapter() {}

    static Chapter of(Material material) {
        var text = new Manuscript("documents", Words.of("printed.documents"));
        material.vehicle()
                .documents()
                .ifPresentOrElse(
                        set -> text.text(Words.of(
                                        "printed.documentsIntro",
                                        set.set(),
                                        set.revision(),
                                        Formats.date(set.handover())))
                                .text(Words.of("printed.rulesCaution"))
                                .grid(grid(material, set), Words.of("printed.noRules")),
                        () -> text.quiet(Words.of("printed.noRules")));
        return text.end();
    }

    private static Grid grid(Material material, DocumentSet set) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.document"), 6),
                        Grid.column(Words.of("printed.standingOf"), 3),
                        Grid.column(Words.of("printed.why"), 7),
                        Grid.column(Words.of("printed.noted"), 4)),
                set.documents().stream()
                        .map(document -> row(material, set, document))
                        .toList());
    }

    private static Row row(Material material, DocumentSet set, Document document) {
        var line = new DocumentLine(material.number(), document, set.handover(), material.handedOver());
        return Row.of(
                Cell.of(line.name())
                        .and(Words.of("printed.rule", document.id(), line.duty(), line.due()), "quiet small"),
                Cell.of(line.standing().word(), line.standing().isOpen() ? "danger" : "")
                        .and(answer(document, line), "quiet small"),
                Cell.of(line.because()).and(line.remark().orElse(""), "").and(line.source(), "quiet small"),
                Cell.of(line.noted().orElse(""))
                        .and(
                                document.noted()
                                        .map(noted -> Words.of(
                                                "printed.notedBy",
                                                noted.who(),
                                                material.formats().moment(noted.at()),
                                                noted.entry()))
                                        .orElse(""),
                                "quiet small"));
    }

    /** What the rule said, where the standing does not say it already. */
    private static String answer(Document document, DocumentLine line) {
        String answer = document.requirement().answer().word();
        return answer.equals(line.standing().word()) ? "" : answer;
    }
}
