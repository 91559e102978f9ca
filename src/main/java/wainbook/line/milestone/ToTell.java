package wainbook.line.milestone;

import wainbook.ledger.Entry;

/** Who is told of a milestone: noted in the transaction of its entry, so that nothing is lost, and told afterwards. */
public interface ToTell {

    /** Noting the same again, when tables are made anew, notes nothing. */
    void of(Milestone milestone, Entry reached);
}
