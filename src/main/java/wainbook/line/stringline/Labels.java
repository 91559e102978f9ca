package wainbook.line.stringline;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.line.stringline.Pieces.Point;

/** Numbers of vehicles where their strings begin, each where it is in no other's way. */
public final class Labels {

    private static final double LETTER = 6.4;
    private static final double HEIGHT = 9;
    private static final double ABOVE = 3;

    /** As SVG has it. */
    public record Label(String x, String y) {}

    private record Box(double left, double foot, double right) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && Math.abs(foot - other.foot) < HEIGHT;
        }
    }

    private final Map<String, Box> placed = new HashMap<>();
    private final double right;

    /** @param right end of the picture */
    Labels(double right) {
        this.right = right;
    }

    void place(String text, Point at) {
        double width = text.length() * LETTER;
        double left = Math.min(at.x(), right - width);
        var box = new Box(left, at.y() - ABOVE, left + width + LETTER);
        if (placed.values().stream().noneMatch(box::meets)) {
            placed.put(text, box);
        }
    }

    Optional<Label> of(String text) {
        return Optional.ofNullable(placed.get(text))
                .map(box -> new Label(Pieces.figure(box.left()), Pieces.figure(box.foot())));
    }
}
