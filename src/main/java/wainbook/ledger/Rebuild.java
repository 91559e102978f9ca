package wainbook.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.hibernate.StatelessSession;
import wainbook.ledger.store.Histories;
import wainbook.ledger.store.MadeBy;

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
            return subjects()
                    .mapToLong(subject -> stream(subject, projections.stream().toList()))
                    .sum();
        });
    }

    /** Makes the tables of these projections again; returns the number of entries read. All or nothing. */
    long only(List<Projection> some) {
        return QuarkusTransaction.requiringNew().timeout(TIMEOUT_S).call(() -> {
            some.forEach(Projection::forget);
            long read = subjects().mapToLong(subject -> stream(subject, some)).sum();
            some.forEach(one -> one.version().ifPresent(MadeBy::keep));
            return read;
        });
    }

    private Stream<Subject> subjects() {
        return session.createSelectionQuery("select subject from StreamHead", String.class).getResultList().stream()
                .map(Subject::parse)
                .sorted(Comparator.comparing(Subject::sort).thenComparing(Subject::code));
    }

    private long stream(Subject subject, List<Projection> takers) {
        History history = histories.of(subject);
        history.entries().forEach(entry -> takers.forEach(projection -> projection.take(entry)));
        tables.flush();
        tables.clear();
        return history.number();
    }
}
