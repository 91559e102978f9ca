package wainbook.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.hibernate.PessimisticLockException;
import org.hibernate.exception.ConstraintViolationException;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.store.Histories;
import wainbook.ledger.writing.Retried;
import wainbook.ledger.writing.Stale;
import wainbook.ledger.writing.Writing;

/** The only way to write: lock, take the time, look for the id, read, decide, append, project, commit. */
@ApplicationScoped
public class Ledger {

    private final Histories histories;
    private final Writing writing;
    private final Instance<Projection> projections;
    private final EntityManager tables;
    private final TransactionSynchronizationRegistry transaction;

    Ledger(
            Histories histories,
            Writing writing,
            Instance<Projection> projections,
            EntityManager tables,
            TransactionSynchronizationRegistry transaction) {
        this.histories = histories;
        this.writing = writing;
        this.projections = projections;
        this.tables = tables;
        this.transaction = transaction;
    }

    /** A stream as it stands now, for drawing a page. An act must not decide by this, but by its {@link Reading}. */
    public History history(Subject subject) {
        return histories.of(subject);
    }

    /** Draws what shows much of the works at once: each stream is read once, however often it is asked for. */
    public <T> T drawing(Supplier<T> draw) {
        return histories.drawing(draw);
    }

    /** Everything of a sort that something was ever said of, by code. */
    public List<Subject> subjects(Subject.Sort sort) {
        return histories.subjects(sort);
    }

    /** How many entries all streams of a sort hold: what was made of them before stays true while this stays the same. */
    public long length(Subject.Sort sort) {
        return histories.length(sort);
    }

    /** How many entries there are in all: it grows with each one that is committed, by whichever process. */
    public long length() {
        return histories.length();
    }

    /**
     * Writes what was asked, if the rule lets it.
     *
     * @param decide called under the lock of the streams that {@code asked} names, at most once a try
     * @return the entry with the request's id; or the reasons against it, and then nothing was written
     */
    public Outcome<Entry> write(Asked asked, Actor actor, Decide decide) {
        if (joined()) {
            return once(asked, actor, decide);
        }
        Optional<Reason> clash = Optional.empty();
        for (int tries = 0; tries < 2; tries++) {
            try {
                return QuarkusTransaction.requiringNew().call(() -> once(asked, actor, decide));
            } catch (RuntimeException failed) {
                clash = Optional.of(clash(failed, asked).orElseThrow(() -> failed));
            }
        }
        return Outcome.refused(clash.orElseThrow());
    }

    /**
     * Does several acts in one transaction: all that they write, or nothing of it. A refusal is an answer as ever and ends
     * nothing; whatever is thrown ends all of it, a clash with somebody else's writing among it.
     *
     * @param timeoutS after which all of it is given up, in seconds
     */
    public <T> T together(int timeoutS, Callable<T> acts) {
        if (joined()) {
            return QuarkusTransaction.joiningExisting().call(acts);
        }
        return QuarkusTransaction.requiringNew().timeout(timeoutS).call(() -> {
            transaction.putResource(Together.class, true);
            histories.keepAll();
            return acts.call();
        });
    }

    private boolean joined() {
        return transaction.getTransactionKey() != null && transaction.getResource(Together.class) != null;
    }

    /** Marks a transaction that several acts share. */
    private static final class Together {}

    private Outcome<Entry> once(Asked asked, Actor actor, Decide decide) {
        Writing.Locked locked = writing.lock(asked, actor);
        Optional<Entry> before = locked.reading().of(asked.writes().get(0)).entry(asked.id());
        if (before.isPresent()) {
            return Retried.difference(asked, locked.reading().moment(), before.get())
                    .map(Outcome::<Entry>refused)
                    .orElseGet(() -> Outcome.alreadyDone(before.get()));
        }
        if (locked.refusal().isPresent()) {
            return Outcome.refused(locked.refusal().get());
        }
        Optional<Reason> stale = Stale.since(asked, locked.reading());
        if (stale.isPresent()) {
            return Outcome.refused(stale.get());
        }
        Decision decision = decide.on(locked.reading());
        if (!decision.reasons().isEmpty()) {
            return Outcome.refused(decision.reasons());
        }
        var entries = writing.append(asked, locked, decision);
        entries.forEach(entry -> projections.forEach(projection -> projection.take(entry)));
        tables.flush();
        return Outcome.done(entries.get(0));
    }

    /**
     * A unique key that said no is a reason and no fault: two people did at once what only one can do. So is a lock that
     * was not had in time, or was lost to break a deadlock.
     */
    private Optional<Reason> clash(Throwable failed, Asked asked) {
        Reason meanwhile = Reason.of(
                "ledger.writtenMeanwhile", Reason.WORKS_RULE, asked.writes().get(0));
        for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
            if (cause instanceof PessimisticLockException) {
                return Optional.of(meanwhile);
            }
            if (cause instanceof ConstraintViolationException violation) {
                String name = String.valueOf(violation.getConstraintName()).toLowerCase(Locale.ROOT);
                return projections.stream()
                        .flatMap(projection -> projection.clash(name).stream())
                        .findFirst()
                        .or(() -> Optional.of(meanwhile));
            }
        }
        return Optional.empty();
    }
}
