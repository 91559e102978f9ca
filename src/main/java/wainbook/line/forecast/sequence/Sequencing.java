package wainbook.line.forecast.sequence;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.engineering.flow.sequence.Budget;
import wainbook.engineering.flow.sequence.Progress;
import wainbook.engineering.flow.sequence.SequenceSearch;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject.Sort;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.sequence.EntrySearch.Standing;
import wainbook.line.forecast.state.TheLineNow;

/** One search at a time, in the background: begun, looked at, cancelled. A restart ends it, and it is told as interrupted. */
@ApplicationScoped
public class Sequencing {

    private static final Logger LOG = Logger.getLogger(Sequencing.class);

    /** What runs now. */
    private static final class Running {
        private final UUID id;
        private final SequenceSearch search;
        private volatile Progress progress;
        private volatile boolean cancelled;

        private Running(UUID id, SequenceSearch search) {
            this.id = id;
            this.search = search;
        }
    }

    private final AtomicReference<Running> running = new AtomicReference<>();
    private final Forecasts forecasts;
    private final Ledger ledger;
    private final ObjectMapper mapper;
    private final Clock clock;

    Sequencing(Forecasts forecasts, Ledger ledger, ObjectMapper mapper, Clock clock) {
        this.forecasts = forecasts;
        this.ledger = ledger;
        this.mapper = mapper;
        this.clock = clock;
    }

    /** Before any page is asked for. */
    @ActivateRequestContext
    void afterRestart(@Observes @Priority(4000) StartupEvent event) {
        QuarkusTransaction.requiringNew()
                .run(() -> EntrySearch.running().forEach(row -> {
                    row.standing = Standing.INTERRUPTED;
                    row.ended = clock.instant();
                }));
    }

    void end(@Observes ShutdownEvent event) {
        Optional.ofNullable(running.get()).ifPresent(now -> now.search.stop());
    }

    public TheLineNow line() {
        return forecasts.line(clock.instant());
    }

    /** Entries about vehicles since a proposal's line stood as it did. */
    public long entriesSince(Proposal proposal) {
        return Math.max(0, entries() - proposal.entries());
    }

    private long entries() {
        return ledger.length(Sort.WORK_ORDER);
    }

    public Optional<Progress> progress(UUID id) {
        return Optional.ofNullable(running.get())
                .filter(now -> now.id.equals(id))
                .map(now -> now.progress);
    }

    /** Begins it, unless one runs. The same id twice begins once. */
    public Outcome<UUID> begin(UUID id, String who) {
        if (EntrySearch.findById(id) != null) {
            return Outcome.alreadyDone(id);
        }
        long entries = entries();
        TheLineNow line = line();
        if (!Proposal.mayChange(line)) {
            return Outcome.refused(
                    Reason.of("line.sequenceNothing", Reason.WORKS_RULE).liftedAt("/orders"));
        }
        var next = new Running(id, new SequenceSearch(Proposal.inFront(line), Budget.usual(Proposal.SEED)));
        if (!running.compareAndSet(null, next)) {
            return Outcome.refused(
                    Reason.of("line.sequenceRuns", Reason.WORKS_RULE).liftedAt("/forecast/sequence#search"));
        }
        try {
            keep(id, who);
        } catch (RuntimeException unkept) {
            running.set(null);
            throw unkept;
        }
        var thread = new Thread(() -> run(next, line, entries), "order-of-entry");
        thread.setDaemon(true);
        thread.start();
        return Outcome.done(id);
    }

    /** What was found until then is compared and kept. */
    public void cancel(UUID id) {
        Optional.ofNullable(running.get()).filter(now -> now.id.equals(id)).ifPresent(now -> {
            now.cancelled = true;
            now.search.stop();
        });
    }

    public Optional<Proposal> proposal(EntrySearch row) {
        return Optional.ofNullable(row.outcome).map(this::read);
    }

    private void run(Running now, TheLineNow line, long entries) {
        try {
            var found = now.search.find(progress -> now.progress = progress);
            ended(
                    now.id,
                    now.cancelled ? Standing.CANCELLED : Standing.ENDED,
                    write(Proposal.of(line, entries, found)));
        } catch (RuntimeException failed) {
            LOG.error("The search for a better order of entry failed.", failed);
            ended(now.id, Standing.FAILED, null);
        } finally {
            running.set(null);
        }
    }

    private void keep(UUID id, String who) {
        QuarkusTransaction.requiringNew().run(() -> {
            var row = new EntrySearch();
            row.id = id;
            row.askedBy = who;
            row.begun = clock.instant();
            row.standing = Standing.RUNNING;
            row.persist();
        });
    }

    private void ended(UUID id, Standing standing, String outcome) {
        QuarkusTransaction.requiringNew().run(() -> {
            EntrySearch row = EntrySearch.findById(id);
            row.standing = standing;
            row.ended = clock.instant();
            row.outcome = outcome;
        });
    }

    private String write(Proposal proposal) {
        try {
            return mapper.writeValueAsString(proposal);
        } catch (JsonProcessingException unwritten) {
            throw new IllegalStateException(unwritten);
        }
    }

    private Proposal read(String text) {
        try {
            return mapper.readValue(text, Proposal.class);
        } catch (JsonProcessingException unread) {
            throw new IllegalStateException(unread);
        }
    }
}
