package wainbook.line.balance.page;

import java.util.List;
import java.util.Optional;
import wainbook.line.balance.content.Content;
import wainbook.page.Filled;

/** How many persons are asked for at each stage, as it stands in the form. */
public record Crews(Content content, Filled filled) {

    /** One stage's field. */
    public record Row(String field, String title, String value, Optional<String> fault) {}

    public List<Row> rows() {
        return content.stages().stream()
                .map(place -> row(place, AskedFor.persons(place.stage())))
                .toList();
    }

    private Row row(Content.Place place, String field) {
        return new Row(
                field,
                BalanceView.title(content, place.stage()),
                filled.value(field),
                filled.form().fault(field));
    }

    /** Whether somewhere more than one is asked for, or a field is wrong. */
    public boolean open() {
        return rows().stream()
                .anyMatch(row -> row.fault().isPresent()
                        || !(row.value().isEmpty() || row.value().equals("1")));
    }
}
