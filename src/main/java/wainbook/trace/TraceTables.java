package wainbook.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;

/** What every entry of a work order names, so that it can be found. */
@ApplicationScoped
class TraceTables implements Projection {

    @Override
    public void take(Entry entry) {
        var made = new HashSet<String>();
        Mention.of(entry).stream()
                .map(mention -> TracedRow.of(entry, mention))
                .filter(row -> made.add(row.id))
                .forEach(row -> row.persist());
    }

    @Override
    public void forget() {
        TracedRow.deleteAll();
    }
}
