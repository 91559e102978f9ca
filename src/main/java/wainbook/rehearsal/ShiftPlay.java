package wainbook.rehearsal;

import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.page.Announcement;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.rehearsal.time.DemoClock;
import wainbook.rehearsal.time.Running;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Plays the shift that runs, or the next one, while people watch. One at a time, and only in the demonstration. */
@ApplicationScoped
public class ShiftPlay implements Announcement {

    private static final Logger LOG = Logger.getLogger("wainbook");

    /** What is left of a shift that is hardly worth watching. */
    private static final Duration TOO_SHORT = Duration.ofMinutes(30);

    /** How a play ended. */
    public enum End {
        RUNNING,
        SHIFT_OVER,
        STOPPED,
        BROKEN
    }

    /** One play, running or the last one. */
    record Play(UUID id, Shifts.Span shift, Instant from, Speed speed, Running time, Tally tally, End end) {
        Play ended(End how) {
            return new Play(id, shift, from, speed, time, tally, how);
        }
    }

    private final Rehearsal rehearsal;
    private final DemoClock demo;
    private final Clock clock;
    private final WorksDay day;
    private Optional<Play> last = Optional.empty();

    ShiftPlay(Rehearsal rehearsal, DemoClock demo, Clock clock, WorksDay day) {
        this.rehearsal = rehearsal;
        this.demo = demo;
        this.clock = clock;
        this.day = day;
    }

    /** Whether there is a demonstration to play in. */
    public boolean possible() {
        return demo.began().isPresent();
    }

    /** Why no shift can be played now; the page asks before it draws. */
    synchronized List<Reason> against() {
        if (!possible()) {
            return List.of(Reason.of("rehearsal.noDemo", Reason.WORKS_RULE));
        }
        if (rehearsal.plays()) {
            return List.of(Reason.of("rehearsal.pastFirst", Reason.WORKS_RULE));
        }
        if (running().isPresent()) {
            return List.of(Reason.of("rehearsal.oneAtATime", Reason.WORKS_RULE).liftedAt("/demo"));
        }
        return shift().isEmpty() ? List.of(Reason.of("rehearsal.noShift", Reason.WORKS_RULE)) : List.of();
    }

    /** The shift that would be played: what is left of the running one, or the next. */
    Optional<Shifts.Span> shift() {
        Instant now = clock.instant();
        Shifts shifts = day.shifts();
        return shifts.running(now)
                .filter(span -> now.plus(TOO_SHORT).isBefore(span.to()))
                .map(span -> new Shifts.Span(span.title(), now, span.to()))
                .or(() -> shifts.nextBegin(now).flatMap(shifts::running));
    }

    synchronized Outcome<Shifts.Span> begin(UUID id, Speed speed) {
        Optional<Play> before = last.filter(play -> play.id().equals(id));
        if (before.isPresent()) {
            return Outcome.alreadyDone(before.get().shift());
        }
        List<Reason> against = against();
        if (!against.isEmpty()) {
            return Outcome.refused(against);
        }
        Shifts.Span shift = shift().orElseThrow();
        double times = speed.times(whole(shift));
        var play = new Play(
                id,
                shift,
                shift.from(),
                speed,
                new Running(shift.from(), times, demo::standing),
                new Tally(),
                End.RUNNING);
        last = Optional.of(play);
        demo.standing(shift.from());
        var thread = new Thread(() -> run(play), "shift");
        thread.setDaemon(true);
        thread.start();
        return Outcome.done(shift);
    }

    /** As long as it is from its begin, so that the speed is the same at whatever time it is joined. */
    private Duration whole(Shifts.Span shift) {
        return day.shifts()
                .running(shift.from())
                .map(span -> Duration.between(span.from(), span.to()))
                .orElseGet(() -> Duration.between(shift.from(), shift.to()));
    }

    private void run(Play play) {
        End how = End.BROKEN;
        try {
            new PlayedShift(rehearsal.present().orElseThrow(), play.tally())
                    .play(play.from(), play.shift().to(), play.time());
            how = play.time().isStopped() || !play.time().comes(play.shift().to()) ? End.STOPPED : End.SHIFT_OVER;
        } catch (RuntimeException failed) {
            LOG.error(Words.of("rehearsal.shiftBroken", play.time().now()), failed);
        } finally {
            ends(play.ended(how));
        }
    }

    private synchronized void ends(Play play) {
        demo.set(play.time().now());
        last = Optional.of(play);
    }

    /** Nothing more is begun; what was begun is done, or taken up by the next play. */
    void stop() {
        last().ifPresent(play -> play.time().stop());
    }

    void shutdown(@Observes ShutdownEvent event) {
        stop();
    }

    synchronized Optional<Play> last() {
        return last;
    }

    Optional<Play> running() {
        return last().filter(play -> play.end() == End.RUNNING);
    }

    @Override
    public Optional<String> text() {
        var formats = new Formats(day.zone());
        return running()
                .map(play -> Words.of(
                        "rehearsal.shiftRuns",
                        play.shift().title(),
                        formats.clock(play.shift().to()),
                        play.speed().minutes()));
    }
}
