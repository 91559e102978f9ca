package wainbook.paper;

/** What a form is for. */
public enum Sort {
    /** A day’s print of the open items of one vehicle. */
    ITEMS,
    ISOLATION,
    PERMIT;

    /** Whether a folder is kept of it with nothing but its number filled in. */
    public boolean blank() {
        return this != ITEMS;
    }
}
