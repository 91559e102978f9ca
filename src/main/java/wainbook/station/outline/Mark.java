package wainbook.station.outline;

import java.util.Optional;

/**
 * One mark where it is drawn, in units of the drawing from its upper left corner: one item, or several that would collide.
 *
 * @param figure the item's number, or how many items it stands for
 * @param word what the figure counts, or that the item failed; none for one item that did not
 */
public record Mark(double x, double y, String figure, Optional<String> word, Marked.Standing standing, boolean inHand) {

    public static final double HEIGHT = 34;

    public static final double NARROW = 34;

    /** A mark with a word is wider. */
    public static final double WIDE = 48;

    public double width() {
        return word.isPresent() ? WIDE : NARROW;
    }

    Mark at(double toX, double toY) {
        return new Mark(toX, toY, figure, word, standing, inHand);
    }

    public boolean failed() {
        return standing == Marked.Standing.FAILED;
    }

    public String centre() {
        return Units.of(x + width() / 2);
    }

    /** Its left edge, so much to the right. */
    public String left(Number moved) {
        return Units.of(x + moved.doubleValue());
    }

    public String top(Number moved) {
        return Units.of(y + moved.doubleValue());
    }

    public String across(Number wider) {
        return Units.of(width() + wider.doubleValue());
    }
}
