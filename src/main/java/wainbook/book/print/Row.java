package wainbook.book.print;

import java.util.List;

/**
 * A row of a grid.
 *
 * @param id where something points to it; else empty
 * @param head whether its one cell stands over the rows that follow
 */
public record Row(String id, boolean head, List<Cell> cells) {
    public Row {
        cells = List.copyOf(cells);
    }

    public static Row of(Cell... cells) {
        return new Row("", false, List.of(cells));
    }

    public static Row of(String... texts) {
        return new Row("", false, List.of(texts).stream().map(Cell::of).toList());
    }

    /** Over the rows that follow it. */
    public static Row head(Cell cell) {
        return new Row("", true, List.of(cell));
    }

    public Row named(String name) {
        return new Row(name, head, cells);
    }

    /** All of it struck through: what it says does not count. */
    public Row struck() {
        return new Row(id, head, cells.stream().map(Cell::struck).toList());
    }
}
