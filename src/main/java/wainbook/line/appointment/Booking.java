package wainbook.line.appointment;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
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
import wainbook.line.LineSaying.AppointmentBooked;
import wainbook.order.WorkOrder;
import wainbook.works.appointment.AppointmentKinds;
import wainbook.works.shift.WorksDay;

/** Books an appointment of a vehicle, or moves it to another time. */
@ApplicationScoped
public class Booking {

    public record ToBook(UUID id, String order, String appointment, Instant on) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return AppointmentBooked.class;
        }
    }

    private final Ledger ledger;
    private final AppointmentKinds kinds;
    private final WorksDay day;

    Booking(Ledger ledger, AppointmentKinds kinds, WorksDay day) {
        this.ledger = ledger;
        this.kinds = kinds;
        this.day = day;
    }

    public Outcome<Entry> book(ToBook asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToBook asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        Optional<WorkOrder> order = WorkOrder.of(reading.of(subject));
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        List<Reason> against = Against.booking(
                order.get(),
                Appointments.of(reading.of(subject), kinds.all()).of(asked.appointment()),
                asked.on(),
                reading.moment().at(),
                day.shifts());
        return against.isEmpty()
                ? Decision.say(subject, new AppointmentBooked(asked.appointment(), asked.on()))
                : Decision.refuse(against);
    }
}
