package wainbook.line.forecast.past;

/** What keeps a vehicle where it is for a time that nobody knows before. */
public enum Stop {
    HOLD,
    /** A nonconformity that awaits its disposition: the gate is not signed before. */
    NONCONFORMITY,
    /** A call for help for which work stands. */
    HELP,
    /** A stay off the line. */
    BAY;

    /**
     * One that stands.
     *
     * @param number by which its vehicle's record calls it
     * @param openMinutes working minutes since it began
     */
    public record Open(Stop sort, int number, boolean stopsWork, double openMinutes) {}
}
