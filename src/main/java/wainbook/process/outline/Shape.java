package wainbook.process.outline;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** One stroke of a drawing, in millimetres from the upper left corner of its view. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Shape.Box.class, name = "box"),
    @JsonSubTypes.Type(value = Shape.Circle.class, name = "circle"),
    @JsonSubTypes.Type(value = Shape.Line.class, name = "line")
})
public sealed interface Shape {

    int LARGEST_MM = 30_000;

    /** How a stroke is drawn. */
    enum Pen {
        /** The body, in front of what was drawn before. */
        OUTLINE,
        /** What is seen on it. */
        DETAIL,
        /** What lies behind it. */
        HIDDEN,
        /** Filled: a tyre, a rail. */
        SOLID
    }

    Pen pen();

    /** As the path of an SVG drawing (SVG 2, chapter 9). */
    String path();

    /** A rectangle with corners rounded by the radius. */
    record Box(int x, int y, int width, int height, int radius, Pen pen) implements Shape {
        public Box {
            inside(x, y);
            positive("a box", width, height);
            if (radius < 0 || 2 * radius > Math.min(width, height)) {
                throw new IllegalArgumentException("a box is not rounded by " + radius);
            }
        }

        @Override
        public String path() {
            String arc = radius == 0 ? "" : "a" + radius + " " + radius + " 0 0 1 ";
            int across = width - 2 * radius;
            int down = height - 2 * radius;
            return "M" + (x + radius) + " " + y
                    + "h" + across + corner(arc, radius, radius)
                    + "v" + down + corner(arc, -radius, radius)
                    + "h" + -across + corner(arc, -radius, -radius)
                    + "v" + -down + corner(arc, radius, -radius) + "z";
        }

        private static String corner(String arc, int toX, int toY) {
            return arc.isEmpty() ? "" : arc + toX + " " + toY;
        }
    }

    /** A circle round its centre. */
    record Circle(int x, int y, int radius, Pen pen) implements Shape {
        public Circle {
            inside(x, y);
            positive("a circle", radius, radius);
        }

        @Override
        public String path() {
            String half = "a" + radius + " " + radius + " 0 0 1 ";
            return "M" + (x - radius) + " " + y + half + 2 * radius + " 0" + half + -2 * radius + " 0z";
        }
    }

    /** A line from point to point, written as {@code x,y x,y}. */
    record Line(String points, boolean closed, Pen pen) implements Shape {
        public Line {
            if (!points.matches("\\d{1,5},\\d{1,5}( \\d{1,5},\\d{1,5}){1,99}")) {
                throw new IllegalArgumentException("a line goes through points such as 0,300 1200,300; not: " + points);
            }
        }

        @Override
        public String path() {
            return "M" + points.replace(' ', 'L').replace(',', ' ') + (closed ? "z" : "");
        }
    }

    private static void inside(int x, int y) {
        if (x < 0 || y < 0 || x > LARGEST_MM || y > LARGEST_MM) {
            throw new IllegalArgumentException("a place lies from 0 to " + LARGEST_MM + " mm, not at " + x + "," + y);
        }
    }

    private static void positive(String what, int width, int height) {
        if (width < 1 || height < 1 || width > LARGEST_MM || height > LARGEST_MM) {
            throw new IllegalArgumentException(what + " has a size of 1 to " + LARGEST_MM + " mm");
        }
    }
}
