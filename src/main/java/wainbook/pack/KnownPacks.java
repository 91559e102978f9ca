package wainbook.pack;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.pack.PackSaying.PartKept;

/**
 * Which serials may be packs and which parts may be kept: in memory, since it is asked with every serial that is read. One too
 * many, from an act that was not kept in the end, costs one look at the record and no more; none is ever missing.
 */
@ApplicationScoped
class KnownPacks implements Projection {

    private final Ledger ledger;
    private final Set<String> serials = ConcurrentHashMap.newKeySet();
    private final Set<String> parts = ConcurrentHashMap.newKeySet();

    KnownPacks(Ledger ledger) {
        this.ledger = ledger;
    }

    void wake(@Observes @Priority(150) StartupEvent event) {
        QuarkusTransaction.requiringNew().run(() -> {
            PackRow.all().forEach(row -> serials.add(row.serial));
            parts.addAll(KeptParts.of(ledger.history(Subject.works())).parts());
        });
    }

    boolean mayBe(String serial) {
        return serials.contains(serial);
    }

    boolean keeps(String part) {
        return parts.contains(part)
                && KeptParts.of(ledger.history(Subject.works())).has(part);
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof PartKept said) {
            parts.add(said.part());
        } else if (entry.saying() instanceof PackSaying && entry.subject().sort() == Subject.Sort.UNIT) {
            serials.add(entry.subject().code());
        }
    }

    @Override
    public void forget() {
        serials.clear();
        parts.clear();
    }
}
