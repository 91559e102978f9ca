package wainbook.rehearsal.time;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;

/** One who acts by turns: runs when told to, until the clock is to go on. */
final class Player implements PlayedClock.Others {

    private final Consumer<PlayedClock> part;
    private final Turns.Surroundings surroundings;
    private final Semaphore goes = new Semaphore(0);
    private final Semaphore waits = new Semaphore(0);
    private final Thread thread;
    private volatile Instant at;
    private volatile boolean over;
    private volatile boolean gone;
    private volatile Optional<Throwable> broken = Optional.empty();

    Player(String name, Instant from, Consumer<PlayedClock> part, Turns.Surroundings surroundings) {
        this.part = part;
        this.surroundings = surroundings;
        this.at = from;
        this.thread = new Thread(this::run, "plays " + name);
        this.thread.setDaemon(true);
    }

    Instant at() {
        return at;
    }

    boolean acts() {
        return !gone;
    }

    void start() {
        thread.start();
    }

    /** Lets it act until it waits for the clock again. */
    void turn() {
        goes.release();
        waits.acquireUninterruptibly();
        broken.ifPresent(fault -> {
            throw new IllegalStateException(thread.getName() + ", and breaks", fault);
        });
    }

    void end() {
        over = true;
        if (!gone && thread.isAlive()) {
            goes.release();
            waits.acquireUninterruptibly();
        }
    }

    private void run() {
        goes.acquireUninterruptibly();
        try {
            if (!over) {
                surroundings.enter();
                part.accept(new PlayedClock(at, this));
                surroundings.leave();
            }
        } catch (Turns.Over ended) {
            // As it should be: what was begun was done, or is taken up by the next play.
        } catch (RuntimeException | Error fault) {
            broken = Optional.of(fault);
        } finally {
            gone = true;
            waits.release();
        }
    }

    @Override
    public void actUntil(Instant time) {
        surroundings.leave();
        at = time;
        waits.release();
        goes.acquireUninterruptibly();
        if (over) {
            throw new Turns.Over();
        }
        surroundings.enter();
    }
}
