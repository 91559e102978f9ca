package wainbook.line.cause;

/**
 * Something that waits for people, and that they can end.
 *
 * @param number by which the vehicle's record calls it; 0 for what a vehicle has one of
 */
public record Matter(Sort sort, String order, int number) {

    /** What it is. */
    public enum Sort {
        HOLD,
        NONCONFORMITY,
        /** A call for help for which work stands. */
        HELP,
        /** A gate that is ready. */
        SIGNATURE,
        /** A part that is awaited at the stage at which the vehicle stands. */
        PART,
        /** A vehicle that could move on. */
        MOVE
    }
}
