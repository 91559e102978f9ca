package wainbook.rehearsal;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import wainbook.ledger.Subject;
import wainbook.page.Announcement;
import wainbook.page.Words;
import wainbook.process.Route;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.rehearsal.time.DemoClock;
import wainbook.rehearsal.time.Timetable;
import wainbook.setup.DemoWorks;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.works.shift.Shift;

/**
 * Fills the demonstration: first the line as it stands, so that the program is ready soon; behind it, while people look
 * round already, the vehicles that have left it. Everything is played through the acts that people use.
 */
@ApplicationScoped
public class Rehearsal implements Announcement {

    /** What the numbers of its work orders begin with. */
    static final String NUMBERS = "WB-";

    /** Into the slot: enough for a line that waits to be seen waiting. */
    private static final int MINUTES_INTO_THE_SLOT = 25;

    private static final Logger LOG = Logger.getLogger("wainbook");

    private final Acts acts;
    private final DemoWorks demo;
    private final DemoClock time;
    private final Clock clock;
    private final boolean wanted;
    private final int handedOver;
    private final boolean behind;

    private Optional<Instant> beginning = Optional.empty();
    private volatile int played;
    private volatile boolean playing;
    private volatile boolean ending;

    Rehearsal(
            Acts acts,
            DemoWorks demo,
            DemoClock time,
            Clock clock,
            @ConfigProperty(name = "wainbook.rehearsal") boolean rehearsal,
            @ConfigProperty(name = "wainbook.rehearsal.handed-over") int handedOver,
            @ConfigProperty(name = "wainbook.rehearsal.behind") boolean behind,
            @ConfigProperty(name = "wainbook.command", defaultValue = "false") boolean command) {
        this.acts = acts;
        this.demo = demo;
        this.time = time;
        this.clock = clock;
        this.handedOver = handedOver;
        this.behind = behind;
        this.wanted = rehearsal && demo.wanted() && !command;
    }

    /**
     * Before the works is written: sets the clock back to when its first vehicle was ordered, since people had to be engaged
     * and instruments calibrated by then.
     */
    void setTheClock(@Observes @Priority(200) StartupEvent event) {
        if (wanted
                && time.began().isEmpty()
                && acts.ledger.history(Subject.works()).isEmpty()) {
            works().ifPresent(works -> {
                ZoneId zone = ZoneId.of(works.works().zone());
                List<Shift> shifts = works.works().shifts().stream()
                        .map(Lines.ShiftLine::shift)
                        .toList();
                Instant present = Timetable.morning(shifts, zone, clock.instant(), MINUTES_INTO_THE_SLOT);
                Route route = works.routes().get(0);
                int steps = route.legs().stream()
                        .mapToInt(leg -> (int) works.stations().stream()
                                .filter(station -> station.stage().equals(Optional.of(leg.stage())))
                                .count())
                        .sum();
                time.set(PlayedPast.beforeAll(Timetable.of(shifts, zone, present), steps, handedOver));
                beginning = Optional.of(present);
            });
        }
    }

    /** After the works is written. */
    @ActivateRequestContext
    void begin(@Observes @Priority(5000) StartupEvent event) {
        beginning.or(time::began).flatMap(this::playing).ifPresent(play -> {
            beginning.ifPresent(present -> {
                new PlayedLine(play, new BesideTheLine(play)).play();
                time.begin(present);
            });
            playing = true;
            if (behind) {
                var thread = new Thread(() -> past(play), "rehearsal");
                thread.setDaemon(true);
                thread.start();
            } else {
                past(play);
            }
        });
    }

    /** Whether the past is being played. */
    boolean plays() {
        return playing;
    }

    /** The works as it is played from now on; empty where there is no demonstration. */
    Optional<Playing> present() {
        return time.began().flatMap(this::playing);
    }

    void end(@Observes ShutdownEvent event) {
        ending = true;
    }

    private Optional<WorksFiles> works() {
        return demo.files().fold(Optional::of, faults -> Optional.empty());
    }

    private Optional<Playing> playing(Instant present) {
        return works().flatMap(works -> Scenario.beside(demo.folder())
                .filter(scenario -> wanted)
                .map(scenario -> new Playing(acts, works, scenario, Odds.usual(), present, NUMBERS)));
    }

    private void past(Playing play) {
        try {
            var past = new PlayedPast(play);
            past.certificates(handedOver);
            new BesideTheLine(play).vehicles();
            for (int number = 1; number <= handedOver && !ending; number++) {
                past.vehicle(number);
                played = number;
            }
            new ReturnScene(play).awaited();
        } catch (RuntimeException failed) {
            LOG.error(Words.of("rehearsal.broken", played), failed);
        } finally {
            playing = false;
        }
    }

    @Override
    public Optional<String> text() {
        return playing ? Optional.of(Words.of("rehearsal.playing", played, handedOver)) : Optional.empty();
    }
}
