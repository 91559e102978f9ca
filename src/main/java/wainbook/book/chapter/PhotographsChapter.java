package wainbook.book.chapter;

import java.util.List;
import wainbook.book.photograph.Photograph;
import wainbook.book.photograph.Photographs;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.page.Words;

/** Every photograph that the record points to: what it shows, when the works had it, its file in the set and its fingerprint. */
final class PhotographsChapter {

    private PhotographsChapter() {}

    static Chapter of(Material material) {
        Photographs photographs = material.photographs();
        var text = new Manuscript("photographs", Words.of("printed.photographs"))
                .text(Words.of("printed.photographsIntro"));
        if (photographs.left().count() > 0) {
            text.caution(left(photographs));
        }
        return text.grid(grid(material), Words.of("printed.noPhotographs")).end();
    }

    /** That some are too much for a set. */
    static String left(Photographs photographs) {
        return Words.of(
                "printed.photographsLeft",
                photographs.left().count(),
                Photographs.megabytes(photographs.left().bytes()),
                Photographs.megabytes(Photographs.MOST_BYTES));
    }

    private static Grid grid(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.pictureShows"), 6),
                        Grid.column(Words.of("printed.when"), 3),
                        Grid.column(Words.of("printed.pictureFile"), 9),
                        Grid.column(Words.of("printed.entry"), 2)),
                material.photographs().all().stream()
                        .map(photograph -> row(material, photograph))
                        .toList());
    }

    private static Row row(Material material, Photograph photograph) {
        Cell shows = Cell.of(photograph.shows());
        return Row.of(
                photograph.counts() ? shows : shows.struck().and(Words.of("printed.void"), "danger"),
                Cell.of(material.formats().moment(photograph.at()), "small nowrap"),
                (photograph.carried()
                                ? Cell.of(photograph.name(), "file")
                                : Cell.of(Words.of("printed.pictureAtWorks"), "danger"))
                        .and(photograph.file().sha256(), "fixed wrap quiet"),
                Cell.of(String.valueOf(photograph.entry()), "fixed"));
    }
}
