package wainbook.order.specification;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.order.specification.SpecificationSaying.ChassisStated;
import wainbook.order.specification.SpecificationSaying.DutyStated;
import wainbook.order.specification.SpecificationSaying.Specified;

/** States the duty of an order and the vehicle it is worked for, and chooses from the table of packs. */
@ApplicationScoped
public class Specifying {

    /** @param judged the last entry about the specification that was seen, 0 for none */
    public record ToStateDuty(UUID id, String order, Duty duty, long judged) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return DutyStated.class;
        }
    }

    /** The same of the vehicle. */
    public record ToStateChassis(UUID id, String order, ChassisFigures chassis, long judged) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ChassisStated.class;
        }
    }

    /** @param library revision of the parts that the table was worked with */
    public record ToSpecify(UUID id, String order, int packs, String packType, long judged, int library)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Specified.class;
        }
    }

    private final Ledger ledger;
    private final SpecificationLook look;

    Specifying(Ledger ledger, SpecificationLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    public Outcome<Entry> state(ToStateDuty asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            return decided(
                    against(history, asked.order(), asked.judged(), DutyRules.against(asked.duty())),
                    history.subject(),
                    () -> new DutyStated(asked.duty()));
        });
    }

    public Outcome<Entry> state(ToStateChassis asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            return decided(
                    against(history, asked.order(), asked.judged(), ChassisRules.against(asked.chassis())),
                    history.subject(),
                    () -> new ChassisStated(asked.chassis()));
        });
    }

    public Outcome<Entry> specify(ToSpecify asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            List<Reason> against = against(history, asked.order(), asked.judged(), List.of());
            if (!against.isEmpty()) {
                return Decision.refuse(against);
            }
            Worked worked = look.worked(history, reading.moment().at());
            return ChoiceRules.against(asked, worked)
                    .map(Decision::refuse)
                    .orElseGet(() -> Decision.say(history.subject(), new Specified(ChoiceRules.chosen(asked, worked))));
        });
    }

    /** What stands against any word about the specification. Asked before a page is drawn, with what was seen. */
    public static List<Reason> against(History history, String order, long judged, List<Reason> figures) {
        var known = WorkOrder.of(history);
        if (known.isEmpty()) {
            return List.of(Reason.of("order.notFound", Reason.WORKS_RULE, order));
        }
        var against = new ArrayList<Reason>(Ordering.closed(known));
        if (Specification.of(history).seen() != judged) {
            against.add(Reason.of("order.specificationStale", Reason.WORKS_RULE)
                    .liftedAt("/orders/" + order + "/specification"));
        }
        against.addAll(figures);
        return against;
    }

    private static Decision decided(List<Reason> against, Subject order, Supplier<Saying> said) {
        return against.isEmpty() ? Decision.say(order, said.get()) : Decision.refuse(against);
    }
}
