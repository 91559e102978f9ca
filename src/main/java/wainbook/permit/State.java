package wainbook.permit;

/** How a permit stands at an instant. */
public enum State {
    WAITS_FOR_RECEIVER,
    IN_FORCE,
    RUN_OUT,
    STOPPED,
    HANDED_BACK,
    ENDED_BY_MOVE,
    CLOSED
}
