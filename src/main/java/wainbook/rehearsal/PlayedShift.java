package wainbook.rehearsal;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.process.Route;
import wainbook.process.Station;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.time.Turns;

/**
 * A shift of the whole works, from wherever it stands: every station and the yard act beside each other in one order of
 * time, each act a transaction of its own.
 */
final class PlayedShift {

    /** Before the end nothing is begun that would leave anybody's lock on over night. */
    private static final Duration MAKING_SAFE = Duration.ofMinutes(12);

    private final Playing playing;
    private final Tally tally;

    PlayedShift(Playing playing, Tally tally) {
        this.playing = playing;
        this.tally = tally;
    }

    void play(Instant from, Instant until, Turns.Time time) {
        var turns = new Turns(new Anew());
        Instant end = until.minus(MAKING_SAFE);
        List<Route> routes = playing.acts.releases.routes();
        routes.stream()
                .flatMap(route -> route.legs().stream().map(Route.Leg::stage))
                .distinct()
                .flatMap(stage -> playing.acts.releases.stationsOf(stage).stream())
                .map(Station::code)
                .forEach(code -> turns.add(
                        code, from, new StationPart(playing, code, first(routes, code), dice(from, code), end, tally)));
        turns.add("YARD", from, new YardPart(playing, dice(from, "YARD"), end, tally));
        turns.play(until, time);
    }

    private Optional<String> first(List<Route> routes, String station) {
        return routes.stream()
                .map(route -> route.first().stage())
                .filter(stage -> playing.acts.releases.stationsOf(stage).stream()
                        .anyMatch(known -> known.code().equals(station)))
                .findFirst();
    }

    private Dice dice(Instant from, String place) {
        return Dice.of(playing.scenario.seed(), "shift", from, place);
    }

    /** After each look at the clock everything is read anew: others have acted meanwhile. */
    private static final class Anew implements Turns.Surroundings {
        private final ManagedContext request = Arc.container().requestContext();

        @Override
        public void enter() {
            request.activate();
        }

        @Override
        public void leave() {
            request.terminate();
        }
    }
}
