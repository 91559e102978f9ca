package wainbook.ledger.bytes;

import wainbook.ledger.Entry;
import wainbook.ledger.Kinds;

/** The sentences of the ledger as they are written and read, one at a time and without a database. */
public final class Sentences {

    private Sentences() {}

    /** The canonical text of an entry that follows another one. */
    public static String text(Entry entry, String previous) {
        return Said.of(entry.id(), entry.subject(), entry.number(), previous, entry.moment(), entry.saying())
                .text();
    }

    public static String hash(String text) {
        return Said.hash(text);
    }

    public static Entry read(String text, Kinds kinds) {
        return Said.parse(text).entry(Said.hash(text), kinds);
    }
}
