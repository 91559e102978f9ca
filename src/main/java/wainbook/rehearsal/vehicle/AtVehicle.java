package wainbook.rehearsal.vehicle;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.step.ToTake;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.crew.Crew;
import wainbook.rehearsal.crew.ToolStore;
import wainbook.rehearsal.crew.Whereabouts;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.setup.DemoWorks;
import wainbook.station.StageRecord;

/**
 * One vehicle, the time there, and the people's acts at it. An act that is refused is a fault of the rehearsal, unless people
 * use the demonstration meanwhile.
 */
public final class AtVehicle {

    /** An act that is refused. */
    public static final class Refused extends IllegalStateException {
        private static final long serialVersionUID = 1;
        private final transient List<Reason> reasons;

        Refused(String what, List<Reason> reasons) {
            super(what + " is refused: " + reasons);
            this.reasons = List.copyOf(reasons);
        }

        public List<Reason> reasons() {
            return reasons;
        }
    }

    final Acts acts;
    final Crew crew;
    final ToolStore tools;
    final PlayedClock clock;
    final Dice dice;
    final String order;
    final Whereabouts.At here;

    public AtVehicle(Acts acts, Crew crew, ToolStore tools, PlayedClock clock, Dice dice, Whereabouts.At here) {
        this.acts = acts;
        this.crew = crew;
        this.tools = tools;
        this.clock = clock;
        this.dice = dice;
        this.here = here;
        this.order = here.order();
    }

    Instant now() {
        return clock.instant();
    }

    void pass(double minutes) {
        clock.pass(Duration.ofSeconds(Math.max(1, Math.round(minutes * 60))));
    }

    History history() {
        return acts.ledger.history(Subject.workOrder(order));
    }

    WorkOrder vehicle() {
        return WorkOrder.of(history()).orElseThrow();
    }

    Isolation isolation() {
        return Isolation.of(history()).at(now());
    }

    StageRecord record(String stage) {
        return acts.workplace.record(history(), vehicle(), stage).orElseThrow();
    }

    Actor as(String person) {
        return new Actor(
                person,
                Optional.empty(),
                Optional.of(vehicle().at().orElseThrow().place()),
                clock);
    }

    Actor inOffice(String person) {
        return Actor.of(person, clock);
    }

    /** A step of the isolation, ten seconds or so after the one before. */
    void step(String person, Wanted wanted) {
        pass(dice.between(0.1, 0.25));
        Entry entry = done(
                acts.isolation.take(
                        new ToTake(dice.id(), order, wanted, Optional.of(DemoWorks.PASSWORD), Optional.empty()),
                        as(person)),
                wanted);
        if (entry.saying() instanceof IsolationSaying.Observed kept) {
            throw new IllegalStateException(order + " " + wanted + " does not count: " + kept.notCountedFor());
        }
    }

    <T> T done(Outcome<T> outcome, Object what) {
        return outcome.fold(entry -> entry, reasons -> {
            throw new Refused(order + " at " + now() + ", " + what, reasons);
        });
    }

    public static <T> T needed(Optional<T> found, Object what) {
        return found.orElseThrow(() -> new IllegalStateException("nobody and nothing is there for " + what));
    }

    List<String> sources() {
        return acts.releases.plan(vehicle().ordered().variant()).stream()
                .flatMap(plan -> java.util.stream.Stream.concat(plan.sources().stream(), plan.later().stream()))
                .map(source -> source.code())
                .toList();
    }
}
