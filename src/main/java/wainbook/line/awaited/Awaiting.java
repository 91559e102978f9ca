package wainbook.line.awaited;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.order.WorkOrder;
import wainbook.works.shift.WorksDay;

/** Says that a part is missing for a stage of a vehicle and when it is expected, or moves that day. */
@ApplicationScoped
public class Awaiting {

    public record ToAwait(UUID id, String order, String stage, String what, Optional<String> part, LocalDate expectedOn)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PartAwaited.class;
        }
    }

    /** @param number of the part that is awaited already */
    public record ToExpect(UUID id, String order, int number, LocalDate expectedOn) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PartAwaited.class;
        }
    }

    private final Ledger ledger;
    private final StagesAhead stages;
    private final WorksDay day;

    Awaiting(Ledger ledger, StagesAhead stages, WorksDay day) {
        this.ledger = ledger;
        this.stages = stages;
        this.day = day;
    }

    public Outcome<Entry> await(ToAwait asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    public Outcome<Entry> expect(ToExpect asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToAwait asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        History history = reading.of(subject);
        Optional<WorkOrder> order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        List<Reason> against = Against.missing(
                order.get(),
                stages.of(history, order.get()).stream()
                        .filter(stage -> stage.code().equals(asked.stage()))
                        .findFirst(),
                asked.what(),
                asked.part(),
                asked.expectedOn(),
                today(reading));
        return against.isEmpty()
                ? Decision.say(
                        subject,
                        new PartAwaited(
                                AwaitedParts.of(history).next(),
                                asked.stage(),
                                asked.what(),
                                asked.part(),
                                asked.expectedOn()))
                : Decision.refuse(against);
    }

    private Decision decide(ToExpect asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        History history = reading.of(subject);
        Optional<WorkOrder> order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        Optional<AwaitedPart> part = AwaitedParts.of(history).of(asked.number());
        List<Reason> against = Against.moving(order.get(), part, asked.expectedOn(), today(reading));
        return part.filter(known -> against.isEmpty())
                .map(known -> Decision.say(
                        subject,
                        new PartAwaited(known.number(), known.stage(), known.what(), known.code(), asked.expectedOn())))
                .orElseGet(() -> Decision.refuse(against));
    }

    private LocalDate today(Reading reading) {
        return day.of(reading.moment().at());
    }
}
