package wainbook.safety.page.view;

import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.permit.Where;
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

    public String permit() {
        return visit.said().permit().map(VisitLine::permit).orElse("");
    }

    /** A permit in words, by {@code vehicle/number}. */
    public static String permit(String key) {
        String[] vehicleAndNumber = key.split("/", 2);
        return vehicleAndNumber[0].equals(Where.WORKS)
                ? Words.of("safety.permitOfWorks", vehicleAndNumber[1])
                : Words.of("safety.permitOfVehicle", vehicleAndNumber[1], vehicleAndNumber[0]);
    }

    public String inductedTo() {
        return Formats.date(visit.inductedTo());
    }

    /** By number: a file leaves the works. */
    public List<String> cells() {
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
