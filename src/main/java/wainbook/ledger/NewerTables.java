package wainbook.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import java.util.List;
import org.jboss.logging.Logger;
import wainbook.ledger.Projection.Version;
import wainbook.ledger.store.MadeBy;

/** After an update: read tables whose rows are made in a new way are made again, before anybody looks at them. */
@ApplicationScoped
public class NewerTables {

    private static final Logger LOG = Logger.getLogger("wainbook");

    private final Rebuild rebuild;
    private final Instance<Projection> projections;

    NewerTables(Rebuild rebuild, Instance<Projection> projections) {
        this.rebuild = rebuild;
        this.projections = projections;
    }

    @ActivateRequestContext
    void begin(@Observes @Priority(50) StartupEvent event) {
        make();
    }

    /** Returns the names of the tables that were made again. */
    public List<String> make() {
        List<Projection> older = QuarkusTransaction.requiringNew()
                .call(() -> projections.stream().filter(NewerTables::isOlder).toList());
        List<String> named = older.stream()
                .flatMap(one -> one.version().stream())
                .map(Version::tables)
                .toList();
        if (!older.isEmpty()) {
            long read = rebuild.only(older);
            LOG.debugf("made %s again from %d entries", named, read);
        }
        return named;
    }

    private static boolean isOlder(Projection projection) {
        return projection.version().filter(wanted -> !MadeBy.madeBy(wanted)).isPresent();
    }
}
