package wainbook.permit;

import java.util.Arrays;
import java.util.List;

/** What a work, or the vehicle it is done on, brings to those beside it. */
public enum Trait {
    HOT_WORK(false),
    HEIGHT(false),
    LIFTING(false),
    STORED_ENERGY(false),
    RAISED(true),
    BENEATH(true),
    FUEL_OPEN(true),
    /** Asked of the vehicle's isolation, never of a person. */
    PACKS_ABOARD(false);

    private final boolean said;

    Trait(boolean said) {
        this.said = said;
    }

    /** Those that whoever issues says of the work, whatever its kind. */
    public static List<Trait> circumstances() {
        return Arrays.stream(values()).filter(trait -> trait.said).toList();
    }
}
