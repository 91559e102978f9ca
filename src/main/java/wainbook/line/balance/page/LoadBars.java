package wainbook.line.balance.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Loads of the stages as horizontal bars with the takt across them; where there is a proposal, a second bar under each. */
public record LoadBars(String title, String description, Optional<Double> takt, String taktName, List<Row> rows) {

    public static final int WIDTH = 760;

    private static final int LEFT = 230;
    private static final int RIGHT = 120;
    private static final int TOP = 22;
    private static final int BAR = 14;
    private static final int LONGEST_NAME = 33;

    /** One stage. */
    public record Row(String name, double minutes, String figure, Optional<Double> then, String thenFigure) {}

    /** A bar as it is drawn. */
    public record Drawn(String sort, int y, int middle, String width, String figure) {}

    /** A stage as it is drawn. */
    public record Named(String name, int middle, List<Drawn> bars) {}

    public LoadBars {
        rows = List.copyOf(rows);
    }

    public int height() {
        return TOP + rows.size() * step() + 4;
    }

    public int left() {
        return LEFT;
    }

    /** Where the figures end, clear of every bar and of the takt. */
    public int figures() {
        return WIDTH - 2;
    }

    public int top() {
        return TOP - 4;
    }

    public Optional<String> taktAt() {
        return takt.map(minutes -> figure(LEFT + width(minutes)));
    }

    public List<Named> drawn() {
        return IntStream.range(0, rows.size())
                .mapToObj(i -> named(rows.get(i), TOP + i * step()))
                .toList();
    }

    private Named named(Row row, int y) {
        List<Drawn> bars = row.then()
                .map(then -> List.of(
                        bar("before", y, row.minutes(), row.figure()),
                        bar(sort(then), y + BAR + 2, then, row.thenFigure())))
                .orElseGet(() -> List.of(bar(sort(row.minutes()), y, row.minutes(), row.figure())));
        return new Named(shortened(row.name()), y + (step() - 8) / 2, bars);
    }

    private String sort(double minutes) {
        return takt.filter(limit -> minutes > limit).isPresent() ? "over" : "within";
    }

    private Drawn bar(String sort, int y, double minutes, String figure) {
        double width = Math.max(1, width(minutes));
        return new Drawn(sort, y, y + BAR / 2, figure(width), figure);
    }

    private int step() {
        return rows.stream().anyMatch(row -> row.then().isPresent()) ? 2 * BAR + 14 : BAR + 12;
    }

    private double width(double minutes) {
        double most = Math.max(
                takt.orElse(1.0),
                rows.stream()
                        .mapToDouble(row -> Math.max(row.minutes(), row.then().orElse(0.0)))
                        .max()
                        .orElse(1));
        return minutes / most * (WIDTH - LEFT - RIGHT);
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME
                ? name
                : name.substring(0, LONGEST_NAME - 1).strip() + "…";
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
