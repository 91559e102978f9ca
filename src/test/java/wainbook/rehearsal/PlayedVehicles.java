package wainbook.rehearsal;

import io.quarkus.arc.Arc;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.rehearsal.vehicle.Legs;
import wainbook.setup.DemoWorks;

/** Vehicles of a benchmark's own, each of another seed, played behind whatever stands on the line. */
public final class PlayedVehicles {

    private static final int TIMEOUT_S = 120;
    private static final AtomicLong SEEDS = new AtomicLong(90_000);

    /**
     * A vehicle at a stage.
     *
     * @param leaving does what is left to do there, so that nobody meets it on the line
     */
    public record AtWork(String number, Runnable leaving) {}

    private final Acts acts = Arc.container().instance(Acts.class).get();

    /** Its whole way; gives its number. */
    public String handedOver() {
        Playing playing = next();
        new PlayedPast(playing).vehicle(1);
        return playing.number(entry(playing));
    }

    /** Received, nothing of its survey recorded. */
    public AtWork atSurvey() {
        Playing playing = next();
        int entry = entry(playing);
        playing.ordered(entry);
        playing.surveyed(entry, 0);
        return new AtWork(playing.number(entry), () -> {});
    }

    /** With the whole record of the stages before. */
    public AtWork atLastStage() {
        Playing playing = next();
        int entry = entry(playing);
        playing.ordered(entry);
        playing.surveyed(entry, 1);
        List<Line.Leg> legs = playing.line(playing.kind(entry)).legs();
        Line.Leg last = legs.get(legs.size() - 1);
        legs.subList(0, legs.size() - 1).forEach(leg -> playing.through(entry, leg, false));
        Legs way = playing.way(entry, last.stage());
        together(() -> playing.onto(way, entry, last));
        return new AtWork(
                playing.number(entry),
                () -> together(() -> {
                    Legs rest = playing.way(entry, "rest");
                    rest.work(last.stage(), last.step(), 0.5).upTo(1);
                    rest.sign(last.stage());
                    rest.out();
                }));
    }

    private void together(Runnable acting) {
        acts.ledger.together(TIMEOUT_S, () -> {
            acting.run();
            return true;
        });
    }

    /** The slot of {@code PlayedPast.vehicle(1)}: before the line and before what waits beside it. */
    private static int entry(Playing playing) {
        return -playing.steps() - Playing.WAITING_FOR_PAPERS - 1;
    }

    private Playing next() {
        DemoWorks demo = Arc.container().instance(DemoWorks.class).get();
        Clock clock = Arc.container().instance(Clock.class).get();
        long seed = SEEDS.incrementAndGet();
        return new Playing(
                acts,
                demo.files().fold(whole -> whole, faults -> null),
                Scenario.beside(demo.folder()).orElseThrow().seeded(seed),
                Odds.usual(),
                clock.instant(),
                "P" + seed + "-");
    }
}
