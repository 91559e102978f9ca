package wainbook.book.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cell of a grid: a picture where there is one, and line under line. */
public record Cell(Optional<Picture> picture, List<Line> lines) {
    public Cell {
        lines = List.copyOf(lines);
    }

    public static Cell of(String text) {
        return of(text, "");
    }

    public static Cell of(String text, String look) {
        return new Cell(Optional.empty(), List.of(new Line(text, look)));
    }

    public static Cell of(Picture picture) {
        return new Cell(Optional.of(picture), List.of());
    }

    /** The same with another line under it; without one where there is nothing to say. */
    public Cell and(String text, String look) {
        if (text.isBlank()) {
            return this;
        }
        var more = new ArrayList<>(lines);
        more.add(new Line(text, look));
        return new Cell(picture, more);
    }

    /** Struck through: what it says does not count. */
    public Cell struck() {
        return new Cell(
                picture,
                lines.stream()
                        .map(line -> new Line(line.text(), line.look() + " struck"))
                        .toList());
    }
}
