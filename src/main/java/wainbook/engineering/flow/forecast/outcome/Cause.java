package wainbook.engineering.flow.forecast.outcome;

/** What a vehicle's time goes into, from minute 0 to its finish. */
public enum Cause {
    /** In front of the line, until it may be set going. */
    RELEASE,
    /** Own work at the stage. */
    WORK,
    /** From a first gate that was refused to the work being done again. */
    REWORK,
    CURING,
    /** For the gate to be signed. */
    SIGNATURE,
    HELD,
    /** For parts that are not there. */
    PARTS,
    /** For the station or the place ahead. */
    PLACE,
    TRANSPORT,
    BAY,
    APPOINTMENT
}
