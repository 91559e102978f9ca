package wainbook.order.limit;

/** What limits of weight tell apart. */
public enum Body {
    GOODS,
    BUS,
    ARTICULATED_BUS
}
