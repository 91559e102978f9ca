package wainbook.station.outline;

import java.util.Locale;
import java.util.Optional;

/**
 * A check item as the drawing marks it.
 *
 * @param number its place in the check sheet
 * @param zone where on the vehicle
 */
public record Marked(int number, String key, String title, Optional<String> zone, Standing standing, boolean inHand) {

    /** How it stands, as far as it is drawn. */
    public enum Standing {
        FAILED,
        OPEN,
        DONE
    }

    /** The word by which the page's marks are drawn. */
    public String look() {
        return inHand ? "now" : standing.name().toLowerCase(Locale.ROOT);
    }

    public boolean open() {
        return standing != Standing.DONE;
    }
}
