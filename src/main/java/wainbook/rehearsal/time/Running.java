package wainbook.rehearsal.time;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Time that runs so many times faster than by day, and waits for whoever cannot keep up. It is shown in small steps up to
 * the next act and never beyond it, so that nobody who looks at the clock is ahead of what happens.
 */
public final class Running implements Turns.Time {

    private static final Duration STEP = Duration.ofMillis(100);

    private final double times;
    private final Consumer<Instant> shown;
    private final CountDownLatch stopped = new CountDownLatch(1);
    private final Instant from;
    private final long begun = System.nanoTime();
    private volatile Instant now;

    /** @param times how many times faster; infinite for no waiting at all */
    public Running(Instant from, double times, Consumer<Instant> shown) {
        this.from = from;
        this.now = from;
        this.times = times;
        this.shown = shown;
    }

    public Instant now() {
        return now;
    }

    public void stop() {
        stopped.countDown();
    }

    public boolean isStopped() {
        return stopped.getCount() == 0;
    }

    @Override
    public boolean comes(Instant time) {
        while (now.isBefore(time)) {
            long due = (long) (Duration.between(from, time).toNanos() / times);
            long step = Math.min(due - (System.nanoTime() - begun), STEP.toNanos());
            if (ended(Math.max(0, step))) {
                return false;
            }
            Instant reached = from.plusNanos((long) ((System.nanoTime() - begun) * times));
            show(step < STEP.toNanos() || reached.isAfter(time) ? time : reached);
        }
        return !isStopped();
    }

    private void show(Instant time) {
        now = time;
        shown.accept(time);
    }

    private boolean ended(long nanos) {
        try {
            return stopped.await(nanos, TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }
}
