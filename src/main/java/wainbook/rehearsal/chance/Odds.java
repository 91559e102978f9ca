package wainbook.rehearsal.chance;

/**
 * How often things go otherwise than planned, as shares of the items or stages they can happen to. Invented for the
 * demonstration; chosen so that every sort of event is seen and most work simply passes.
 *
 * @param outside a reading outside its limits at the first try, of items that can come out wrong
 * @param reported something else found wrong while working on an item
 * @param voided an entry made void and done again, of items
 * @param held a stage interrupted by a hold
 * @param carriedOver an item carried over, of those that may be
 * @param refused a gate refused before it is signed
 */
public record Odds(double outside, double reported, double voided, double held, double carriedOver, double refused) {

    public static Odds usual() {
        return new Odds(0.035, 0.004, 0.012, 0.03, 0.01, 0.04);
    }

    /** For finding faults: everything happens often. */
    public static Odds rough() {
        return new Odds(0.25, 0.05, 0.15, 0.3, 0.1, 0.3);
    }

    static Odds none() {
        return new Odds(0, 0, 0, 0, 0, 0);
    }
}
