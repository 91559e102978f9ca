package wainbook.paper.page.sheet;

import java.util.List;

/** A part of a form: rows and columns of blanks, the same on paper and where it is typed in. */
public record Section(String key, String title, String note, List<Column> columns, List<Row> rows) {

    /** What kind of thing a column holds. */
    public enum Kind {
        TEXT,
        TIME,
        NUMBER
    }

    /** One column. */
    public record Column(String key, String label, Kind kind) {}

    /** @param detail how it is done, in smaller letters */
    public record Row(String key, String label, String detail) {}

    public Section {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The name of a blank. */
    public String field(Row row, Column column) {
        return field(key, row.key(), column.key());
    }

    public static String field(String section, String row, String column) {
        return section + "." + row + "." + column;
    }
}
