package wainbook.station.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.page.Words;

/**
 * The marks of one zone. Every item has its own while there is room; then items of one standing share a mark that counts
 * them; at last one mark says the worst of it.
 */
final class Marks {

    static final double GAP = 3;

    private Marks() {}

    static List<Mark> in(double x, double y, double width, double height, List<Marked> items) {
        return Stream.of(each(items), groups(items), toDo(items), List.of(worst(items)))
                .map(marks -> laid(x, y, width, height, marks))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "a zone of " + width + " by " + height + " has no room for a mark"));
    }

    private static List<Mark> each(List<Marked> items) {
        return items.stream().map(Marks::one).toList();
    }

    private static Mark one(Marked item) {
        boolean failed = item.standing() == Marked.Standing.FAILED;
        return new Mark(
                0,
                0,
                String.valueOf(item.number()),
                failed ? Optional.of(Words.of("station.markFailed")) : Optional.empty(),
                item.standing(),
                item.inHand());
    }

    /** The item in hand by itself, the others by how they stand. */
    private static List<Mark> groups(List<Marked> items) {
        List<Marked> others = items.stream().filter(item -> !item.inHand()).toList();
        List<Mark> marks = new ArrayList<>();
        items.stream().filter(Marked::inHand).map(Marks::one).forEach(marks::add);
        for (Marked.Standing standing : Marked.Standing.values()) {
            counted(others, standing).ifPresent(marks::add);
        }
        return marks;
    }

    private static List<Mark> toDo(List<Marked> items) {
        List<Mark> marks = new ArrayList<>();
        counted(items, Marked.Standing.FAILED).ifPresent(marks::add);
        counted(items, Marked.Standing.OPEN).ifPresent(marks::add);
        return marks.isEmpty() ? List.of(worst(items)) : marks;
    }

    private static Mark worst(List<Marked> items) {
        return Stream.of(Marked.Standing.values())
                .flatMap(standing -> counted(items, standing).stream())
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Mark> counted(List<Marked> items, Marked.Standing standing) {
        List<Marked> alike =
                items.stream().filter(item -> item.standing() == standing).toList();
        if (alike.size() == 1) {
            return Optional.of(one(alike.get(0)));
        }
        String word = switch (standing) {
            case FAILED -> Words.of("station.markFailed");
            case OPEN -> Words.of("station.markItems");
            case DONE -> Words.of("station.markDone");
        };
        return alike.isEmpty()
                ? Optional.empty()
                : Optional.of(new Mark(
                        0,
                        0,
                        String.valueOf(alike.size()),
                        Optional.of(word),
                        standing,
                        alike.stream().anyMatch(Marked::inHand)));
    }

    /** In rows, in the middle of the zone; empty when they have no room. */
    private static Optional<List<Mark>> laid(double x, double y, double width, double height, List<Mark> marks) {
        List<List<Mark>> rows = new ArrayList<>();
        double used = width + 1;
        for (Mark mark : marks) {
            if (mark.width() > width) {
                return Optional.empty();
            }
            if (used + GAP + mark.width() > width) {
                rows.add(new ArrayList<>());
                used = -GAP;
            }
            rows.get(rows.size() - 1).add(mark);
            used += GAP + mark.width();
        }
        double high = rows.size() * (Mark.HEIGHT + GAP) - GAP;
        if (high > height) {
            return Optional.empty();
        }
        List<Mark> laid = new ArrayList<>();
        double down = y + (height - high) / 2;
        for (List<Mark> row : rows) {
            double wide = row.stream().mapToDouble(Mark::width).sum() + GAP * (row.size() - 1);
            double across = x + (width - wide) / 2;
            for (Mark mark : row) {
                laid.add(mark.at(across, down));
                across += mark.width() + GAP;
            }
            down += Mark.HEIGHT + GAP;
        }
        return Optional.of(laid);
    }
}
