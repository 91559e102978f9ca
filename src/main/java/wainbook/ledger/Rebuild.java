package wainbook.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import java.util.Comparator;
import org.hibernate.StatelessSession;
import wainbook.ledger.store.Histories;

/** Makes all tables that are read from again, stream by stream: the works first, work orders last. */
@ApplicationScoped
public class Rebuild {

    private static final int TIMEOUT_S = 3600;

    private final StatelessSession session;
    private final Histories histories;
    private final Instance<Projection> projections;
    private final EntityManager tables;

    Rebuild(StatelessSession session, Histories histories, Instance<Projection> projections, EntityManager tables) {
        this.session = session;
        this.histories = histories;
        this.projections = projections;
        this.tables = tables;
    }

    /** Returns the number of entries read. All or nothing. */
    public long everything() {
        return QuarkusTransaction.requiringNew().timeout(TIMEOUT_S).call(() -> {
            projections.forEach(Projection::forget);
            histories.forget();
            return session.createSelectionQuery("select subject from StreamHead", String.class).getResultList().stream()
                    .map(Subject::parse)
                    .sorted(Comparator.comparing(Subject::sort).thenComparing(Subject::code))
                    .mapToLong(this::stream)
                    .sum();
        });
    }

    private long stream(Subject subject) {
        History history = histories.of(subject);
        history.entries().forEach(entry -> projections.forEach(projection -> projection.take(entry)));
        tables.flush();
        tables.clear();
        return history.number();
    }
}
