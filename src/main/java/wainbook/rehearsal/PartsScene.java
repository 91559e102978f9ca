package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.awaited.Awaiting;
import wainbook.line.awaited.Coming;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.vehicle.Events;
import wainbook.works.Role;

/**
 * Parts that a demonstration finds missing, for vehicles that wait in front of the line: one came this morning, one is awaited for
 * about a day after its vehicle would come to the stage. Its dice are its own: nothing else falls otherwise.
 */
final class PartsScene {

    private static final String STAGE = "driveline";
    private static final String CODE = "STEER-PUMP";
    private static final int SLOTS_TOO_LATE = 5;
    private static final Duration MISSED_BEFORE = Duration.ofMinutes(95);

    private final Playing playing;
    private final Dice dice;

    PartsScene(Playing playing) {
        this.playing = playing;
        this.dice = Dice.of(playing.scenario.seed(), "parts");
    }

    void awaited(int entry) {
        missed(entry);
    }

    void came(int entry) {
        if (missed(entry)) {
            done(
                    playing.acts.coming.note(
                            new Coming.ToNote(dice.id(), playing.number(entry), 1, "At the station"),
                            actor(entry, Duration.ofMinutes(20))),
                    entry);
        }
    }

    /** Whether it was said now, and not when the works was begun before. */
    private boolean missed(int entry) {
        History history = playing.history(entry);
        Optional<Instant> expected = playing.line(playing.kind(entry)).legs().stream()
                .filter(leg -> leg.stage().equals(STAGE))
                .map(leg -> playing.times.start(entry + leg.step() + SLOTS_TOO_LATE))
                .findFirst();
        if (expected.isEmpty() || !AwaitedParts.of(history).all().isEmpty()) {
            return false;
        }
        done(
                playing.acts.awaiting.await(
                        new Awaiting.ToAwait(
                                dice.id(),
                                playing.number(entry),
                                STAGE,
                                Events.STEERING_PUMP,
                                Optional.of(CODE),
                                playing.acts.day.of(expected.get())),
                        actor(entry, MISSED_BEFORE)),
                entry);
        return true;
    }

    /** So long before the present, and not before what is on record. */
    private Actor actor(int entry, Duration before) {
        List<Entry> entries = playing.history(entry).entries();
        Instant last = entries.get(entries.size() - 1).moment().at();
        Instant at = playing.present.minus(before);
        return Actor.of(
                playing.crew(playing.at("office")).anyone(Role.TEAM_LEADER, dice),
                Clock.fixed(at.isAfter(last) ? at : last, ZoneOffset.UTC));
    }

    private static <T> T done(Outcome<T> outcome, int entry) {
        return outcome.fold(entered -> entered, reasons -> {
            throw new IllegalStateException("part for " + entry + ": " + reasons);
        });
    }
}
