package wainbook.line.measure.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wainbook.engineering.flow.status.Doing;

/**
 * What each station did with its working time, as one bar of the same length each: the parts are shares of its own. A part is told by its
 * place, its pattern and, where there is room, by its word.
 */
public record StateBars(String title, String description, List<Row> rows) {

    public static final int WIDTH = 760;

    /** From work to waiting, so that a short dark part means a station that waits. */
    static final List<Doing> ORDER = List.of(
            Doing.WORKING,
            Doing.OVER_TAKT,
            Doing.HELD,
            Doing.DOWN,
            Doing.AWAITING_SIGN_OFF,
            Doing.BLOCKED,
            Doing.STARVED);

    private static final int LEFT = 210;
    private static final int STEP = 34;
    private static final int BAR = 24;
    private static final double LETTER = 6.9;
    private static final double AIR = 10;
    private static final int LONGEST_NAME = 30;

    /** One station. */
    public record Row(String name, List<Part> parts) {
        public Row {
            parts = List.copyOf(parts);
        }
    }

    /** @param share of the bar, from 0 to 1 */
    public record Part(Doing doing, String word, double share, String figure) {}

    /** A part as it is drawn. */
    public record Drawn(String kind, String x, String width, String middle, String label, String words) {}

    /** A station as it is drawn. */
    public record Named(String name, int y, int middle, List<Drawn> parts) {}

    public StateBars {
        rows = List.copyOf(rows);
    }

    public int height() {
        return rows.size() * STEP + 4;
    }

    public int nameEnd() {
        return LEFT - 8;
    }

    public int left() {
        return LEFT;
    }

    public int span() {
        return WIDTH - LEFT - 2;
    }

    public List<Named> drawn() {
        var all = new ArrayList<Named>();
        for (int i = 0; i < rows.size(); i++) {
            int y = i * STEP + 5;
            all.add(new Named(shortened(rows.get(i).name()), y, y + BAR / 2, parts(rows.get(i))));
        }
        return all;
    }

    private List<Drawn> parts(Row row) {
        var parts = new ArrayList<Drawn>();
        double x = LEFT;
        for (Part part : row.parts()) {
            double width = part.share() * span();
            if (width > 0) {
                parts.add(new Drawn(
                        part.doing().name().toLowerCase(Locale.ROOT),
                        figure(x),
                        figure(width),
                        figure(x + width / 2),
                        label(part, width),
                        row.name() + ": " + part.word() + " " + part.figure()));
            }
            x += width;
        }
        return parts;
    }

    private static String label(Part part, double width) {
        String whole = part.word() + " " + part.figure();
        if (whole.length() * LETTER + AIR < width) {
            return whole;
        }
        return part.word().length() * LETTER + AIR < width ? part.word() : "";
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
