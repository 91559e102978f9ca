package wainbook.line.appointment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.order.WorkOrder;
import wainbook.works.appointment.AppointmentKinds;

/** Notes how an appointment came out. */
@ApplicationScoped
public class Attendance {

    public record ToAttend(UUID id, String order, String appointment, boolean passed, String remark) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return AppointmentAttended.class;
        }
    }

    private final Ledger ledger;
    private final AppointmentKinds kinds;

    Attendance(Ledger ledger, AppointmentKinds kinds) {
        this.ledger = ledger;
        this.kinds = kinds;
    }

    public Outcome<Entry> attend(ToAttend asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToAttend asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        Optional<WorkOrder> order = WorkOrder.of(reading.of(subject));
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        List<Reason> against = Against.attending(
                order.get(),
                Appointments.of(reading.of(subject), kinds.all()).of(asked.appointment()),
                asked.passed(),
                asked.remark());
        return against.isEmpty()
                ? Decision.say(subject, new AppointmentAttended(asked.appointment(), asked.passed(), asked.remark()))
                : Decision.refuse(against);
    }
}
