package wainbook.handover.carbon;

import java.util.Locale;
import wainbook.page.Words;

/** What a factor stands for. Fuel and electricity both count from the well to the wheel. */
public enum Factor {
    DIESEL_VEHICLE,
    DIESEL_UPSTREAM,
    GRID_GENERATION,
    GRID_LOSSES,
    GRID_UPSTREAM,
    GRID_LOSSES_UPSTREAM;

    public String word() {
        return Words.of("handover.carbonFactor." + name());
    }

    boolean diesel() {
        return this == DIESEL_VEHICLE || this == DIESEL_UPSTREAM;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
