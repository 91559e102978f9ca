package wainbook.safety.page;

import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.safety.visit.Visit;

/**
 * A visit as lists show it.
 *
 * @param name of the visitor; their number where it was deleted
 * @param wrong what is wrong while they are inside, in words
 */
public record VisitLine(Visit visit, String name, String firm, List<String> wrong) {

    public Optional<String> permitPath() {
        return visit.said().permit().map(permit -> "/permits/" + permit);
    }

    public String inductedTo() {
        return Formats.date(visit.inductedTo());
    }

    /** By number: a file leaves the works. */
    List<String> cells() {
        return List.of(
                String.valueOf(visit.number()),
                visit.visitor(),
                visit.said().area(),
                visit.host(),
                visit.entered().moment().at().toString(),
                visit.left().map(entry -> entry.moment().at().toString()).orElse(""),
                visit.inductedTo().toString(),
                visit.said().permit().orElse(""),
                String.join(" ", wrong));
    }
}
