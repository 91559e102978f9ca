package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
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
import wainbook.order.WorkOrder;
import wainbook.station.serial.BroughtSaying.PartTakenOff;
import wainbook.station.serial.StandingSerials.Serial;

/**
 * Records that a part with which a vehicle came back is off it. A part that this order fitted is replaced at its own check
 * item, or its entry is voided. That a source was aboard stays on record: the isolation goes on counting its place.
 */
@ApplicationScoped
public class TakingOff {

    private static final int LONGEST = 500;

    /** What is asked. */
    public record ToTakeOff(UUID id, String order, String part, String serial, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PartTakenOff.class;
        }
    }

    private final Ledger ledger;

    TakingOff(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> takeOff(ToTakeOff asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            List<Reason> against = against(asked, reading.of(order));
            return against.isEmpty()
                    ? Decision.say(
                            order,
                            new PartTakenOff(
                                    asked.part(), asked.serial(), asked.reason().strip()))
                    : Decision.refuse(against);
        });
    }

    private static List<Reason> against(ToTakeOff asked, History history) {
        var against = new ArrayList<>(against(history, asked.order(), new Serial(asked.part(), asked.serial())));
        if (asked.reason().isBlank() || asked.reason().length() > LONGEST) {
            against.add(Reason.of("station.takenOffReason", Reason.WORKS_RULE, LONGEST)
                    .liftedAt("#reason"));
        }
        return against;
    }

    /** What stands against taking this part off, whatever the reason. */
    public static List<Reason> against(History history, String order, Serial serial) {
        var against = new ArrayList<Reason>();
        if (WorkOrder.of(history).filter(known -> known.at().isPresent()).isEmpty()) {
            against.add(Reason.of("station.notHereToTakeOff", Reason.WORKS_RULE, order)
                    .liftedAt("/orders/" + order));
        }
        if (!StandingSerials.of(history).brought().contains(serial)) {
            against.add(Reason.of("station.notBrought", Reason.WORKS_RULE, serial.part(), serial.number())
                    .liftedAt("/orders/" + order + "#fitted"));
        }
        return against;
    }
}
