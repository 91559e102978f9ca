package wainbook.ledger;

import java.util.Map;
import wainbook.act.Moment;

/** What a decision is made from: the moment, and the locked streams as they stand. */
public record Reading(Moment moment, Map<Subject, History> histories) {

    public Reading {
        histories = Map.copyOf(histories);
    }

    /** The history of a stream that this act locked. */
    public History of(Subject subject) {
        History history = histories.get(subject);
        if (history == null) {
            throw new IllegalArgumentException(subject + " is read here but was not named in writes()");
        }
        return history;
    }
}
