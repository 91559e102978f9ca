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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.engineering.balance.Progress;
import wainbook.line.balance.BalanceSearch.Standing;
import wainbook.line.balance.asked.Asked;
import wainbook.line.balance.asked.Objections;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.ContentLook;
import wainbook.line.balance.content.Recorded;

/** One search at a time, in the background: begun, looked at, cancelled. A restart ends it, and it is told as interrupted. */
@ApplicationScoped
public class Searching {

    private static final Logger LOG = Logger.getLogger(Searching.class);

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
        Optional.ofNullable(running.get()).ifPresent(Running::stop);
    }

    public Optional<Progress> progress(UUID id) {
        return now(id).flatMap(Running::progress);
    }

    /** Whether it looks by now what the rules on items cost. */
    public boolean comparing(UUID id) {
        return now(id).filter(Running::comparing).isPresent();
    }

    /** Since it began; 0 where it does not run. */
    public double seconds(UUID id) {
        return now(id).map(Running::seconds).orElse(0.0);
    }

    private Optional<Running> now(UUID id) {
        return Optional.ofNullable(running.get()).filter(now -> now.is(id));
    }

    /** Begins it, unless one runs or something stands against the question. The same id twice begins once. */
    public Outcome<UUID> begin(UUID id, Question question, String who) {
        if (BalanceSearch.findById(id) != null) {
            return Outcome.alreadyDone(id);
        }
        Content content = look.now();
        if (content.items().isEmpty()) {
            return Outcome.refused(
                    Reason.of("line.balanceNothing", Reason.WORKS_RULE).liftedAt("/process"));
        }
        List<Reason> objections = Objections.to(new Asked(content, question));
        if (!objections.isEmpty()) {
            return Outcome.refused(objections);
        }
        Recorded recorded = question.asRecorded() ? look.recorded(clock.instant()) : Recorded.NOTHING;
        return Running.of(id, new Asked(content.timed(recorded), question), recorded)
                .map(next -> begin(next, question, who))
                .orElseGet(() -> Outcome.refused(
                        Reason.of("line.balanceCircle", Reason.WORKS_RULE).liftedAt("/process")));
    }

    private Outcome<UUID> begin(Running next, Question question, String who) {
        if (!running.compareAndSet(null, next)) {
            return Outcome.refused(
                    Reason.of("line.balanceRuns", Reason.WORKS_RULE).liftedAt("/balance#search"));
        }
        try {
            keep(next.id(), question, who);
        } catch (RuntimeException unkept) {
            running.set(null);
            throw unkept;
        }
        var thread = new Thread(() -> run(next), "balance");
        thread.setDaemon(true);
        thread.start();
        return Outcome.done(next.id());
    }

    /** What was found until then is kept. */
    public void cancel(UUID id) {
        now(id).ifPresent(Running::cancel);
    }

    public Question question(BalanceSearch row) {
        return read(row.question, Question.class);
    }

    public Optional<Proposal> proposal(BalanceSearch row) {
        return Optional.ofNullable(row.outcome).map(text -> read(text, Proposal.class));
    }

    private void run(Running now) {
        try {
            Proposal proposal = now.find();
            ended(now.id(), now.cancelled() ? Standing.CANCELLED : Standing.ENDED, write(proposal));
        } catch (RuntimeException failed) {
            LOG.error("The search for a better balance failed.", failed);
            ended(now.id(), Standing.FAILED, null);
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
