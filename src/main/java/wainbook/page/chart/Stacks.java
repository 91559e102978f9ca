package wainbook.page.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * What adds up to a total, as horizontal bars of pieces, and what comes back of it: a line in each bar stands at what is left. Each piece
 * bears the number of its name below. The table beside it has the same.
 *
 * @param names of the pieces, in their order
 */
public record Stacks(String title, String description, List<String> names, List<Stack> stacks) {

    public static final int WIDTH = 760;

    private static final int ROW = 34;
    private static final int LEFT = 170;
    private static final int RIGHT = 100;
    private static final int KEY = 20;
    private static final int KEY_COLUMNS = 2;
    private static final int KEYS_TOP = 14;
    private static final int NUMBERED_PX = 16;

    /**
     * One bar.
     *
     * @param pieces as many as there are names, none below nought
     * @param left of their sum, after what comes back
     * @param figure what is left, in words
     */
    public record Stack(String name, List<Double> pieces, double left, String figure) {
        public Stack {
            pieces = List.copyOf(pieces);
        }

        private double sum() {
            return pieces.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    /** A piece as it is drawn; its number is blank where it is too narrow. */
    public record Piece(String x, String width, String middle, String number, String sort, String words) {}

    /** A bar as it is drawn. */
    public record Drawn(String name, int y, int middle, List<Piece> pieces, String left, String end, String figure) {}

    /** A name as it is drawn below the bars. */
    public record Key(int x, int y, String sort, String name) {}

    public Stacks {
        names = List.copyOf(names);
        stacks = List.copyOf(stacks);
        if (stacks.isEmpty() || stacks.stream().allMatch(stack -> stack.sum() <= 0)) {
            throw new IllegalArgumentException("stacks have something to show");
        }
    }

    public int height() {
        return keysTop() + (names.size() + KEY_COLUMNS - 1) / KEY_COLUMNS * KEY;
    }

    public int barsFoot() {
        return stacks.size() * ROW;
    }

    public int left() {
        return LEFT;
    }

    public List<Drawn> drawn() {
        return IntStream.range(0, stacks.size())
                .mapToObj(i -> drawn(stacks.get(i), i * ROW + 7))
                .toList();
    }

    private Drawn drawn(Stack stack, int y) {
        var pieces = new ArrayList<Piece>();
        double from = LEFT;
        for (int i = 0; i < names.size(); i++) {
            double width = scaled(stack.pieces().get(i));
            if (width > 0) {
                pieces.add(new Piece(
                        figure(from),
                        figure(width),
                        figure(from + width / 2),
                        width < NUMBERED_PX ? "" : "" + (i + 1),
                        "p" + (i + 1),
                        names.get(i) + ": " + Chart.plain(stack.pieces().get(i))));
            }
            from += width;
        }
        return new Drawn(
                stack.name(), y, y + 10, pieces, figure(LEFT + scaled(stack.left())), figure(from + 6), stack.figure());
    }

    public List<Key> keys() {
        int rows = (names.size() + KEY_COLUMNS - 1) / KEY_COLUMNS;
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Key(
                        LEFT + i / rows * (WIDTH - LEFT) / KEY_COLUMNS,
                        keysTop() + i % rows * KEY,
                        "p" + (i + 1),
                        (i + 1) + " " + names.get(i)))
                .toList();
    }

    private int keysTop() {
        return barsFoot() + KEYS_TOP;
    }

    private double scaled(double value) {
        double most = stacks.stream().mapToDouble(Stack::sum).max().orElseThrow();
        return value / most * (WIDTH - LEFT - RIGHT);
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
