package wainbook.process.stream;

/** What becomes of something that was taken out of a vehicle. */
public enum Fate {
    /** Kept for use in a vehicle; in quarantine until it is tested. */
    REUSE,
    REFURBISH,
    /** Goes back to whoever supplied the exchange part. */
    CORE,
    /** The operator, or whoever sold the donor, takes it back. */
    BOUGHT_BACK,
    /** To somebody else, for use. */
    SOLD,
    RECYCLE,
    DISPOSE;

    /** Whether the works discards it: it goes into a container, and under a note. */
    public boolean waste() {
        return this == RECYCLE || this == DISPOSE;
    }

    /** Whether it leaves the works as a product, by a day that was agreed. */
    public boolean leaves() {
        return this == CORE || this == BOUGHT_BACK || this == SOLD;
    }

    /** Whether it lies in a rack of the works. */
    public boolean stays() {
        return this == REUSE || this == REFURBISH;
    }
}
