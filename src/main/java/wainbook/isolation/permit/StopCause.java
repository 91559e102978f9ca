package wainbook.isolation.permit;

/** Why work stops. After a break a short proof may do; after anything else every point is proved again. */
public enum StopCause {
    BREAK,
    SHIFT_END,
    ASKED,
    ALARM
}
