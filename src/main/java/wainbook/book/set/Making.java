package wainbook.book.set;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import org.jboss.logging.Logger;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.book.chapter.BuildBook;
import wainbook.book.set.Workbench.Piece;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** Makes books and freezes sets behind the page. */
@ApplicationScoped
public class Making {

    private static final Logger LOG = Logger.getLogger(Making.class);
    private static final int TIMEOUT_S = 600;

    private final Workbench<Printed> books = new Workbench<>();
    private final Workbench<Outcome<Entry>> sets = new Workbench<>();
    private final BuildBook buildBook;
    private final Freezing freezing;

    Making(BuildBook buildBook, Freezing freezing) {
        this.buildBook = buildBook;
        this.freezing = freezing;
    }

    /** A book that is ready. */
    @SuppressWarnings("ArrayRecordComponent") // Nobody compares them.
    public record Printed(byte[] pdf, long upTo, String head) {}

    /** How work behind the page stands. */
    public enum Standing {
        NOT_ASKED,
        RUNNING,
        READY,
        FAILED;

        static Standing of(Optional<? extends Piece<?>> piece) {
            return piece.map(known -> known.running() ? RUNNING : known.failed() ? FAILED : READY)
                    .orElse(NOT_ASKED);
        }
    }

    void end(@Observes ShutdownEvent event) {
        books.stop();
        sets.stop();
    }

    public Standing bookOf(History history) {
        return Standing.of(books.at(key(history)));
    }

    /** The book that was made last; the record may have grown since. */
    public Optional<Printed> printed(History history) {
        return books.at(key(history)).flatMap(Piece::ready);
    }

    public void askForBook(History history) {
        ask(history);
    }

    /** For scripts, which can wait. */
    public Printed waitForBook(History history) {
        try {
            return ask(history).coming().join();
        } catch (CompletionException failed) {
            throw new IllegalStateException("the book of " + history.subject() + " could not be made", failed);
        }
    }

    private Piece<Printed> ask(History history) {
        String order = history.subject().code();
        return books.ask(
                key(history),
                hash(history),
                () -> logged(() -> QuarkusTransaction.requiringNew()
                        .timeout(TIMEOUT_S)
                        .call(() -> buildBook
                                .of(order)
                                .map(made -> new Printed(
                                        made.pdf(),
                                        made.material().stored().number(),
                                        made.material().stored().hash()))
                                .orElseThrow())));
    }

    public Standing setOf(History history) {
        return Standing.of(sets.at(key(history)));
    }

    /** What came of the last try to freeze. */
    public Optional<Outcome<Entry>> frozen(History history) {
        return sets.at(key(history)).flatMap(Piece::ready);
    }

    public void askToFreeze(History history, Freezing.ToFreeze asked, Actor actor) {
        sets.ask(key(history), asked.id().toString(), () -> logged(() -> freezing.freeze(asked, actor)));
    }

    private static <T> T logged(java.util.function.Supplier<T> work) {
        try {
            return work.get();
        } catch (RuntimeException failed) {
            LOG.error("A book could not be made.", failed);
            throw failed;
        }
    }

    private static String key(History history) {
        return history.subject().toString();
    }

    private static String hash(History history) {
        return history.entries().get(history.entries().size() - 1).hash();
    }
}
