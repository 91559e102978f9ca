package wainbook.book.set;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;

/**
 * Long work, one piece at a time, behind the page: asked for, standing, ready. What came of it is kept for a while and can
 * always be made again, so nothing of it is stored.
 */
final class Workbench<T> {

    private final Cache<String, Piece<T>> pieces = Caffeine.newBuilder()
            .maximumSize(8)
            .expireAfterWrite(Duration.ofHours(4))
            .build();

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "build-book");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * A piece of work.
     *
     * @param of what it is made from, by a fingerprint: as long as this stays, it need not be made anew
     */
    record Piece<T>(String of, CompletableFuture<T> coming) {

        boolean running() {
            return !coming.isDone();
        }

        boolean failed() {
            return coming.isCompletedExceptionally();
        }

        Optional<T> ready() {
            return coming.isDone() && !failed() ? Optional.of(coming.join()) : Optional.empty();
        }
    }

    Optional<Piece<T>> at(String key) {
        return Optional.ofNullable(pieces.getIfPresent(key));
    }

    /** The piece that is there or under way for this fingerprint; else a new one is begun. */
    synchronized Piece<T> ask(String key, String of, Supplier<T> work) {
        Optional<Piece<T>> there = at(key).filter(piece -> piece.of().equals(of) && !piece.failed());
        return there.orElseGet(() -> {
            var piece = new Piece<>(of, CompletableFuture.supplyAsync(work, worker));
            pieces.put(key, piece);
            return piece;
        });
    }

    void stop() {
        worker.shutdownNow();
    }
}
