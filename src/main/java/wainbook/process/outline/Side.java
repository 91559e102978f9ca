package wainbook.process.outline;

/** From where a vehicle is looked at. Its front is always to the left. */
public enum Side {
    SIDE,
    ABOVE,
    UNDERNEATH
}
