package wainbook.works.instruments.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.instruments.Instrument;

/** The form for a calibration. */
public record CalibrationView(Instrument instrument, long seen, Filled filled) {

    /** A table of points: the name its fields begin with, and its caption. */
    public record Table(String name, String caption, String hint) {}

    public List<Table> tables() {
        return List.of(
                new Table("found", Words.of("works.asFound"), Words.of("works.asFoundHint")),
                new Table("left", Words.of("works.asLeft"), Words.of("works.asLeftHint")));
    }

    /** One column of a table: how its fields' names end, its heading, and how wide it is. */
    public record Column(String name, String label, int width) {}

    public List<Column> columns() {
        return List.of(
                new Column("Target", Words.of("works.pointTarget"), 7),
                new Column("Error", Words.of("works.pointError"), 7),
                new Column("W", Words.of("works.pointW"), 7),
                new Column("Readings", Words.of("works.pointReadings"), 28));
    }

    public List<Integer> rows() {
        return IntStream.rangeClosed(1, TypedPoints.ROWS).boxed().toList();
    }

    public List<Option> adjustments() {
        return Arrays.stream(Adjustment.values())
                .map(one -> new Option(one.name(), Words.of("works.adjustment." + one)))
                .toList();
    }

    /** Whether error and uncertainty are to be worked out here, or were tried to be. */
    public boolean worksOut() {
        return Stream.of("referenceW", "step")
                .anyMatch(field -> !filled.value(field).isEmpty()
                        || filled.form().fault(field).isPresent());
    }

    public String path() {
        return "/instruments/" + instrument.code();
    }

    /** What a cell holds, and what is wrong with it. */
    public String value(String table, int row, String column) {
        return filled.value(table + row + column);
    }

    public String fault(String table, int row, String column) {
        return filled.form().fault(table + row + column).orElse("");
    }
}
