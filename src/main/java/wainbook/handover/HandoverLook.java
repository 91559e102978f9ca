package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.gate.Gate;
import wainbook.handover.HandoverRules.GateAt;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.requirement.RuleSets;
import wainbook.ledger.History;
import wainbook.line.appointment.Appointments;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.station.work.Workplace;
import wainbook.works.appointment.AppointmentKinds;
import wainbook.works.shift.WorksDay;

/** Brings together what handing over is judged from. */
@ApplicationScoped
public class HandoverLook {

    /** The rules a vehicle is judged by where nobody stated its market. */
    private static final String USUAL = "GB";

    private final RuleSets sets;
    private final Workplace workplace;
    private final Releases releases;
    private final AppointmentKinds appointments;
    private final WorksDay day;

    HandoverLook(RuleSets sets, Workplace workplace, Releases releases, AppointmentKinds appointments, WorksDay day) {
        this.sets = sets;
        this.workplace = workplace;
        this.releases = releases;
        this.appointments = appointments;
        this.day = day;
    }

    /** The set as it stands for the day of handover, or for today before; empty where its market has no rules here. */
    public Optional<DocumentSet> documents(History history, WorkOrder order, Instant now) {
        LocalDate handover = history.saying(HandedOver.class)
                .findFirst()
                .map(entry -> entry.moment().at())
                .map(day::of)
                .orElseGet(() -> day.of(now));
        return sets.named(market(order)).map(rules -> DocumentSet.of(rules, history, order, handover));
    }

    public HandoverRules rules(History history, WorkOrder order, Moment moment) {
        List<GateAt> gates = order.gates().stream()
                .map(stage -> new GateAt(
                        stage,
                        releases.stage(stage).map(Stage::title).orElse(stage),
                        workplace.record(history, order, stage).map(record -> Gate.of(history, record))))
                .toList();
        return new HandoverRules(
                history,
                order,
                gates,
                workplace.deferred(history, order),
                Appointments.of(history, appointments.all()),
                documents(history, order, moment.at()),
                moment.who());
    }

    public LocalDate today(Instant now) {
        return day.of(now);
    }

    public static String market(WorkOrder order) {
        return order.facts().getOrDefault("market", USUAL).strip().toUpperCase(Locale.ROOT);
    }
}
