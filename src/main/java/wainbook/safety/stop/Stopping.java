package wainbook.safety.stop;

import static wainbook.order.OrderSaying.Stops.MOVE;
import static wainbook.order.OrderSaying.Stops.SIGN;
import static wainbook.order.OrderSaying.Stops.WORK;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.Holding;
import wainbook.page.Words;
import wainbook.permit.Where;
import wainbook.safety.SafetySaying.StopLifted;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.SafetySaying.WorkStopped;
import wainbook.safety.Surely;
import wainbook.works.Person;

/**
 * Stops work at a vehicle, or where none stands at a place. Anybody may, with no word: no rule stands against it. A vehicle
 * is held for work, signing and moving; a station without one takes none in.
 */
@ApplicationScoped
public class Stopping {

    /** What is asked; a vehicle or station that there is not is left out, and then the whole works is told. */
    public record ToStop(UUID id, Optional<String> order, Optional<String> station, Optional<String> words) {}

    /** Words that come later. */
    public record ToTell(UUID id, Subject stream, int stop, String words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(stream);
        }

        @Override
        public Class<? extends Saying> says() {
            return StopTold.class;
        }
    }

    /** What was done at a place before work goes on there. */
    public record ToLift(UUID id, int stop, String done) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return StopLifted.class;
        }
    }

    private record ToWrite(UUID id, Subject stream, Optional<String> station, Optional<String> words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(stream);
        }

        @Override
        public Class<? extends Saying> says() {
            return WorkStopped.class;
        }
    }

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private final Ledger ledger;

    Stopping(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> stop(ToStop asked, Actor actor) {
        Subject stream = stream(asked);
        Optional<String> station = asked.station().filter(code -> code.matches(CODE));
        return Surely.written(
                asked.id(),
                id -> ledger.write(
                        new ToWrite(id, stream, station, asked.words()),
                        actor,
                        reading -> stopped(reading.of(stream), station, asked.words())));
    }

    /** Where a retry finds the first try, though the vehicle may have gone on meanwhile; else the vehicle, else the works. */
    private Subject stream(ToStop asked) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> StopRow.ofEntry(asked.id())
                        .map(row -> Where.stream(row.vehicle))
                        .or(() -> asked.order().flatMap(this::vehicle))
                        .or(() -> asked.station()
                                .flatMap(WorkOrderRow::occupant)
                                .map(row -> Subject.workOrder(row.number)))
                        .orElseGet(Subject::works));
    }

    private Optional<Subject> vehicle(String order) {
        return Optional.of(order)
                .filter(code -> code.matches(CODE))
                .map(Subject::workOrder)
                .filter(subject -> WorkOrder.of(ledger.history(subject)).isPresent());
    }

    private static Decision stopped(History stream, Optional<String> station, Optional<String> words) {
        Subject subject = stream.subject();
        int number = Stops.of(stream).next();
        if (subject.equals(Subject.works())) {
            return Decision.say(subject, new WorkStopped(number, Optional.empty(), station, words));
        }
        int hold = Holding.next(stream);
        return Decision.say(subject, new WorkStopped(number, Optional.of(hold), station, words))
                .andSay(subject, new Held(hold, HoldKind.SAFETY, List.of(WORK, SIGN, MOVE), reason(words)));
    }

    private static String reason(Optional<String> words) {
        return words.map(text -> Words.of("safety.stopReasonWith", text))
                .orElseGet(() -> Words.of("safety.stopReason"));
    }

    public Outcome<Entry> tell(ToTell asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (Stops.of(reading.of(asked.stream())).number(asked.stop()).isEmpty()) {
                against.add(Reason.of("safety.stopNotFound", Reason.WORKS_RULE, asked.stop()));
            }
            if (asked.words().isBlank()) {
                against.add(Reason.of("safety.wordsMissing", Reason.WORKS_RULE).liftedAt("#words"));
            }
            return against.isEmpty()
                    ? Decision.say(asked.stream(), new StopTold(asked.stop(), asked.words()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> lift(ToLift asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = LiftRules.against(
                    Stops.of(reading.of(Subject.works())).number(asked.stop()),
                    asked,
                    Person.of(ledger.history(Subject.person(reading.moment().who()))));
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new StopLifted(asked.stop(), asked.done()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against this person's lifting it, whatever they would say. Asked before a page is drawn. */
    public List<Reason> againstLifting(Stop stop, Moment now) {
        return LiftRules.mayLift(stop, Person.of(ledger.history(Subject.person(now.who()))));
    }
}
