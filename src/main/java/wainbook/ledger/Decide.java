package wainbook.ledger;

/** A room's rule: what comes of a request, given what is on record. Pure but for reading. */
@FunctionalInterface
public interface Decide {
    Decision on(Reading reading);
}
