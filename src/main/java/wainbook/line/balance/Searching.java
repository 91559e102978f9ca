package wainbook.line.balance;

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
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Progress;
import wainbook.engineering.balance.Search;
import wainbook.line.balance.BalanceSearch.Standing;

/** One search at a time, in the background: begun, looked at, cancelled. A restart ends it, and it is told as interrupted. */
@ApplicationScoped
public class Searching {

    private static final Logger LOG = Logger.getLogger(Searching.class);

    /** What runs now. */
    private static final class Running {
        private final UUID id;
        private final Search search;
        private final long begun = System.nanoTime();
        private volatile Progress progress;
        private volatile boolean cancelled;

        private Running(UUID id, Search search) {
            this.id = id;
            this.search = search;
        }
    }

    private final AtomicReference<Running> running = new AtomicReference<>();
    private final ContentLook look;
    private final ObjectMapper mapper;
    private final Clock clock;

    Searching(ContentLook look, ObjectMapper mapper, Clock clock) {
        this.look = look;
        this.mapper = mapper;
        this.clock = clock;
    }

    /** Before any page is asked for. */
    @ActivateRequestContext
    void afterRestart(@Observes @Priority(4000) StartupEvent event) {
        QuarkusTransaction.requiringNew()
                .run(() -> BalanceSearch.running().forEach(row -> {
                    row.standing = Standing.INTERRUPTED;
                    row.ended = clock.instant();
                }));
    }

    void end(@Observes ShutdownEvent event) {
        Optional.ofNullable(running.get()).ifPresent(now -> now.search.stop());
    }

    public Optional<Progress> progress(UUID id) {
        return Optional.ofNullable(running.get())
                .filter(now -> now.id.equals(id))
                .map(now -> now.progress);
    }

    /** Since it began; 0 where it does not run. */
    public double seconds(UUID id) {
        return Optional.ofNullable(running.get())
                .filter(now -> now.id.equals(id))
                .map(now -> (System.nanoTime() - now.begun) / 1e9)
                .orElse(0.0);
    }

    /** Begins it, unless one runs. The same id twice begins once. */
    public Outcome<UUID> begin(UUID id, Question question, String who) {
        if (BalanceSearch.findById(id) != null) {
            return Outcome.alreadyDone(id);
        }
        Content content = look.now();
        if (content.items().isEmpty()) {
            return Outcome.refused(
                    Reason.of("line.balanceNothing", Reason.WORKS_RULE).liftedAt("/process"));
        }
        Optional<Search> search = Search.of(content.work(question), content.aim(question));
        if (search.isEmpty()) {
            return Outcome.refused(
                    Reason.of("line.balanceCircle", Reason.WORKS_RULE).liftedAt("/process"));
        }
        var next = new Running(id, search.get());
        if (!running.compareAndSet(null, next)) {
            return Outcome.refused(
                    Reason.of("line.balanceRuns", Reason.WORKS_RULE).liftedAt("/balance#search"));
        }
        try {
            keep(id, question, who);
        } catch (RuntimeException unkept) {
            running.set(null);
            throw unkept;
        }
        var thread = new Thread(() -> run(next, content), "balance");
        thread.setDaemon(true);
        thread.start();
        return Outcome.done(id);
    }

    /** What was found until then is kept. */
    public void cancel(UUID id) {
        Optional.ofNullable(running.get()).filter(now -> now.id.equals(id)).ifPresent(now -> {
            now.cancelled = true;
            now.search.stop();
        });
    }

    public Question question(BalanceSearch row) {
        return read(row.question, Question.class);
    }

    public Optional<Proposal> proposal(BalanceSearch row) {
        return Optional.ofNullable(row.outcome).map(text -> read(text, Proposal.class));
    }

    private void run(Running now, Content content) {
        try {
            Found found = now.search.find(progress -> now.progress = progress);
            ended(now.id, now.cancelled ? Standing.CANCELLED : Standing.ENDED, write(Proposal.of(content, found)));
        } catch (RuntimeException failed) {
            LOG.error("The search for a better balance failed.", failed);
            ended(now.id, Standing.FAILED, null);
        } finally {
            running.set(null);
        }
    }

    private void keep(UUID id, Question question, String who) {
        QuarkusTransaction.requiringNew().run(() -> {
            var row = new BalanceSearch();
            row.id = id;
            row.askedBy = who;
            row.begun = clock.instant();
            row.standing = Standing.RUNNING;
            row.question = write(question);
            row.persist();
        });
    }

    private void ended(UUID id, Standing standing, String outcome) {
        QuarkusTransaction.requiringNew().run(() -> {
            BalanceSearch row = BalanceSearch.findById(id);
            row.standing = standing;
            row.ended = clock.instant();
            row.outcome = outcome;
        });
    }

    private String write(Object value) {
        try {
            return mapper.writeValueAsString(value);
        } catch (JsonProcessingException unwritten) {
            throw new IllegalStateException(unwritten);
        }
    }

    private <T> T read(String text, Class<T> type) {
        try {
            return mapper.readValue(text, type);
        } catch (JsonProcessingException unread) {
            throw new IllegalStateException(unread);
        }
    }
}
