package wainbook.isolation;

import java.util.EnumSet;
import java.util.Set;

/** Where a vehicle’s isolation stands. Only {@link #IN_FORCE} lets anybody work on the dead system. */
public enum State {
    LIVE,
    PLANNED,
    SHUT_DOWN,
    LOCKED,
    PROVED_DEAD,
    IN_FORCE,
    STOPPED,
    UNDER_TEST,
    HANDED_BACK,
    READY,
    VOID;

    /** Every source is open and the isolator’s lock is on. */
    static final Set<State> SECURED = EnumSet.range(LOCKED, READY);

    /** An isolation has begun and has neither ended nor been voided. */
    static final Set<State> OPEN = EnumSet.range(PLANNED, READY);
}
