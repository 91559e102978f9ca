package wainbook.book.print;

import java.util.List;

/** A table. */
public record Grid(List<Column> columns, List<Row> rows) {

    /**
     * A column.
     *
     * @param width in twentieths of the page
     * @param figures whether figures stand in it, at its right
     */
    public record Column(String title, int width, boolean figures) {}

    public Grid {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    public static Column column(String title, int width) {
        return new Column(title, width, false);
    }

    public static Column figures(String title, int width) {
        return new Column(title, width, true);
    }
}
