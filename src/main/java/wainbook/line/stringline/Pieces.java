package wainbook.line.stringline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Level pieces of a string, each at its height, joined by slants: on a paced line everybody steps down at the same moment, and
 * upright joints would run together into a grid.
 */
public final class Pieces {

    private static final double SLANT = 4;

    public record Point(double x, double y) {
        @Override
        public String toString() {
            return figure(x) + "," + figure(y);
        }
    }

    private record Piece(double from, double to, double y) {
        double slant() {
            return Math.min(SLANT, (to - from) / 3);
        }
    }

    private final List<Piece> pieces = new ArrayList<>();

    /** Nothing to the left of its beginning. */
    void add(double from, double to, double y) {
        pieces.add(new Piece(from, Math.max(from, to), y));
    }

    boolean none() {
        return pieces.isEmpty();
    }

    Point first() {
        return new Point(pieces.get(0).from(), pieces.get(0).y());
    }

    List<Point> points() {
        var points = new ArrayList<Point>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            double begun = i == 0 ? piece.from() : piece.from() + piece.slant();
            double ends = i == pieces.size() - 1 ? piece.to() : piece.to() - piece.slant();
            points.add(new Point(begun, piece.y()));
            points.add(new Point(ends, piece.y()));
        }
        return points;
    }

    String line() {
        return written(points());
    }

    /** The area between this and another string. */
    String upTo(Pieces other) {
        var points = new ArrayList<>(points());
        var back = new ArrayList<>(other.points());
        Collections.reverse(back);
        points.addAll(back);
        return written(points);
    }

    private static String written(List<Point> points) {
        return points.stream().map(Point::toString).collect(Collectors.joining(" "));
    }

    static String figure(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
