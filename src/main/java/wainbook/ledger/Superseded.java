package wainbook.ledger;

/** A kind of entry that has a newer version. Old entries stay as they are and are read through this. */
public interface Superseded {

    /** The same statement in the next version of its kind: a pure function of this one. */
    Saying newer();
}
