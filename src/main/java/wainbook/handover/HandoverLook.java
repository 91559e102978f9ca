package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.gate.Gate;
import wainbook.handover.HandoverRules.GateAt;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.requirement.RuleSet;
import wainbook.handover.requirement.RuleSets;
import wainbook.ledger.History;
import wainbook.line.appointment.Appointments;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.CalibrationLook;
import wainbook.order.hold.StandingHolds;
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
    private final StandingHolds holds;
    private final CalibrationLook calibrations;

    HandoverLook(
            RuleSets sets,
            Workplace workplace,
            Releases releases,
            AppointmentKinds appointments,
            WorksDay day,
            StandingHolds holds,
            CalibrationLook calibrations) {
        this.sets = sets;
        this.workplace = workplace;
        this.releases = releases;
        this.appointments = appointments;
        this.day = day;
        this.holds = holds;
        this.calibrations = calibrations;
    }

    /** The set as it stands for the day of handover, or for today before; empty where its market has no rules here. */
    public Optional<DocumentSet> documents(History history, WorkOrder order, Instant now) {
        return under(market(order), history, order, now);
    }

    /** The same vehicle on the same day by the rules of any market; empty where that has none here. Changes nothing. */
    public Optional<DocumentSet> under(String set, History history, WorkOrder order, Instant now) {
        LocalDate handover = history.saying(HandedOver.class)
                .findFirst()
                .map(entry -> entry.moment().at())
                .map(day::of)
                .orElseGet(() -> day.of(now));
        return sets.named(set).map(rules -> DocumentSet.of(rules, history, order, handover));
    }

    /** Every gate of its route, in order, the survey's first. */
    public List<GateAt> gates(History history, WorkOrder order) {
        return order.gates().stream()
                .map(stage -> new GateAt(
                        stage,
                        releases.stage(stage).map(Stage::title).orElse(stage),
                        workplace.record(history, order, stage).map(record -> Gate.of(history, record))))
                .toList();
    }

    public HandoverRules rules(History history, WorkOrder order, Moment moment) {
        return new HandoverRules(
                history,
                order,
                gates(history, order),
                workplace.deferred(history, order),
                Appointments.of(history, appointments.all()),
                documents(history, order, moment.at()),
                moment.who(),
                holds.against(order, Stops.MOVE, Stops.SIGN),
                calibrations.compared(history));
    }

    /** Why a vehicle cannot be looked at by this set. */
    public static Reason unknown(String set) {
        return Reason.of("handover.setUnknown", Reason.WORKS_RULE, set, String.join(", ", RuleSet.there()))
                .liftedAt("#set");
    }

    public LocalDate today(Instant now) {
        return day.of(now);
    }

    public static String market(WorkOrder order) {
        return order.facts().getOrDefault("market", USUAL).strip().toUpperCase(Locale.ROOT);
    }
}
