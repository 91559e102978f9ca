package wainbook.station.outline;

import java.util.Locale;

/** A length as the drawing writes it. */
final class Units {

    private Units() {}

    static String of(double units) {
        return String.format(Locale.ROOT, "%.1f", units);
    }
}
