package wainbook.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;

/** What every entry names, so that the vehicle can be found by it. */
@ApplicationScoped
class TraceTables implements Projection {

    /** 2: software, revisions, nonconformities, permits, locks, containers and notes too. 3: documents and their texts. */
    @Override
    public Optional<Version> version() {
        return Optional.of(new Version("traced", 3));
    }

    @Override
    public void take(Entry entry) {
        var made = new HashSet<String>();
        Mentions.in(entry).stream()
                .map(named -> TracedRow.of(entry, named))
                .filter(row -> made.add(row.id))
                .forEach(row -> row.persist());
    }

    @Override
    public void forget() {
        TracedRow.deleteAll();
    }
}
