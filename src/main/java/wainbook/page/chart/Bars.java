package wainbook.page.chart;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Counts or shares as horizontal bars, each named and with its figure at its end. The table beside it has the same.
 *
 * @param most what the longest bar that could be stands for; the scale begins at nought
 */
public record Bars(String title, String description, String unit, double most, List<Bar> bars) {

    public static final int WIDTH = 760;

    private static final int ROW = 26;
    private static final int LEFT = 250;
    private static final int RIGHT = 90;
    private static final int LONGEST_NAME = 36;

    /** One bar with what it stands for. */
    public record Bar(String name, double value, String figure) {}

    /** A bar as it is drawn. */
    public record Drawn(String name, int y, int middle, String width, String end, String figure) {}

    public Bars {
        bars = List.copyOf(bars);
        if (bars.isEmpty() || most <= 0) {
            throw new IllegalArgumentException("bars have something to show, on a scale above nought");
        }
    }

    public int height() {
        return bars.size() * ROW + 4;
    }

    public int left() {
        return LEFT;
    }

    public List<Drawn> drawn() {
        return IntStream.range(0, bars.size())
                .mapToObj(i -> {
                    Bar bar = bars.get(i);
                    double width = Math.max(1, bar.value() / most * (WIDTH - LEFT - RIGHT));
                    return new Drawn(
                            shortened(bar.name()),
                            i * ROW + 5,
                            i * ROW + 5 + 8,
                            figure(width),
                            figure(LEFT + width + 6),
                            bar.figure());
                })
                .toList();
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
