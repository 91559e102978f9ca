package wainbook.page.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Values along an axis, with levels across it and lines through it. The figures are those of the viewBox; the words are on the
 * page that draws it, whose table has the same values.
 *
 * @param title what it shows, in one line
 * @param description what is to be seen, in words for somebody who does not see it
 * @param unit of the values
 * @param marks the values, each at its place along the axis
 * @param levels limits, centre lines
 * @param lines a trend and its edges
 */
public record Chart(
        String title, String description, String unit, List<Mark> marks, List<Level> levels, List<Line> lines) {

    public static final int WIDTH = 760;
    public static final int HEIGHT = 260;

    private static final int LEFT = 64;
    private static final int RIGHT = 150;
    private static final int TOP = 26;
    private static final int BOTTOM = 40;
    private static final int MOST_LABELS = 8;
    private static final double AIR = 0.08;

    /**
     * One value.
     *
     * @param at its place along the axis
     * @param label of that place
     * @param speaks whether it is to be seen first, and drawn so
     */
    public record Mark(double at, String label, double value, boolean speaks) {}

    /** What a level is. */
    public enum Sort {
        /** What is permitted. */
        LIMIT,
        /** How far chance carries. */
        CONTROL,
        CENTRE
    }

    /** A level across the whole chart, named at its end. */
    public record Level(Sort sort, String name, double value) {}

    /** A line through points. */
    public record Line(boolean edge, List<Point> points) {
        public Line {
            points = List.copyOf(points);
        }
    }

    public record Point(double at, double value) {}

    /** A mark as it is drawn. */
    public record Dot(String x, String y, boolean speaks, String words) {}

    /** A level, or a tick, as it is drawn. */
    public record Across(String y, String name, String sort) {}

    /** A place along the axis that is labelled. */
    public record Place(String x, String label) {}

    /** A line as it is drawn. */
    public record Path(String points, boolean edge) {}

    public Chart {
        marks = List.copyOf(marks);
        levels = List.copyOf(levels);
        lines = List.copyOf(lines);
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("a chart has one value or more");
        }
    }

    public List<Dot> dots() {
        return marks.stream()
                .map(mark -> new Dot(
                        x(mark.at()),
                        y(mark.value()),
                        mark.speaks(),
                        mark.label() + ": " + plain(mark.value()) + " " + unit))
                .toList();
    }

    /** The run of the values. */
    public String run() {
        return points(
                marks.stream().map(mark -> new Point(mark.at(), mark.value())).toList());
    }

    /** Levels from the lowest up, their names kept apart. */
    public List<Across> across() {
        return levels.stream()
                .map(level -> new Across(
                        y(level.value()),
                        level.name() + " " + plain(level.value()),
                        level.sort().name().toLowerCase(Locale.ROOT)))
                .toList();
    }

    public List<Across> ticks() {
        return Ticks.within(least(), most(), 5).stream()
                .map(tick ->
                        new Across(y(tick.doubleValue()), tick.toPlainString().replace('-', '−'), "tick"))
                .toList();
    }

    public List<Place> places() {
        int every = Math.max(1, (marks.size() + MOST_LABELS - 1) / MOST_LABELS);
        var places = new ArrayList<Place>();
        for (int i = 0; i < marks.size(); i += every) {
            places.add(new Place(x(marks.get(i).at()), marks.get(i).label()));
        }
        return places;
    }

    public List<Path> paths() {
        return lines.stream()
                .map(line -> new Path(points(line.points()), line.edge()))
                .toList();
    }

    public int right() {
        return WIDTH - RIGHT;
    }

    public int left() {
        return LEFT;
    }

    public int foot() {
        return HEIGHT - BOTTOM;
    }

    private String points(List<Point> points) {
        return points.stream()
                .map(point -> x(point.at()) + "," + y(point.value()))
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }

    private String x(double at) {
        double first = places(true);
        double last = places(false);
        double share = last > first ? (at - first) / (last - first) : 0.5;
        return figure(LEFT + 10 + share * (WIDTH - LEFT - RIGHT - 20));
    }

    private double places(boolean first) {
        DoubleStream all = Stream.concat(
                        marks.stream().map(Mark::at),
                        lines.stream().flatMap(line -> line.points().stream()).map(Point::at))
                .mapToDouble(Double::doubleValue);
        return (first ? all.min() : all.max()).orElseThrow();
    }

    private String y(double value) {
        double share = (value - least()) / (most() - least());
        return figure(HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM));
    }

    private double least() {
        return values().min().orElseThrow() - air();
    }

    private double most() {
        return values().max().orElseThrow() + air();
    }

    /** Room above and below; where all values are one, as much as that value, so that it stands in the middle. */
    private double air() {
        double low = values().min().orElseThrow();
        double high = values().max().orElseThrow();
        return high > low ? (high - low) * AIR : Math.max(Math.abs(high), 1);
    }

    private DoubleStream values() {
        return Stream.of(
                        marks.stream().map(Mark::value),
                        levels.stream().map(Level::value),
                        lines.stream().flatMap(line -> line.points().stream()).map(Point::value))
                .flatMap(values -> values)
                .mapToDouble(Double::doubleValue);
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** To four significant figures: the table beside it has the value as it was typed. */
    static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4));
        return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros())
                .toPlainString()
                .replace('-', '−');
    }
}
