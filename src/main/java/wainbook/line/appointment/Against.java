package wainbook.line.appointment;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.works.shift.Shifts;

/** What stands against booking an appointment and against noting how it came out. */
final class Against {

    private static final Set<Phase> OVER = Set.of(Phase.HANDED_OVER, Phase.DONOR_REJECTED);
    private static final int LONGEST_REMARK = 2000;
    /** Half of what the forecast looks ahead: a date beyond it is a slip of the pen. */
    private static final int DAYS_AHEAD = 90;

    private Against() {}

    static List<Reason> booking(
            WorkOrder order, Optional<Appointment> appointment, Instant on, Instant now, Shifts shifts) {
        List<Reason> against = new ArrayList<>(either(order, appointment));
        if (on.isBefore(now)) {
            against.add(Reason.of("line.appointmentOver", Reason.WORKS_RULE).liftedAt("#on"));
        }
        if (on.isAfter(now.plus(Duration.ofDays(DAYS_AHEAD)))) {
            against.add(Reason.of("line.appointmentTooFar", Reason.WORKS_RULE, DAYS_AHEAD)
                    .liftedAt("#on"));
        }
        appointment
                .filter(one -> !one.kind().open(on, shifts.zone()))
                .ifPresent(one -> against.add(Reason.of(
                                "line.appointmentClosed",
                                Reason.WORKS_RULE,
                                one.kind().title())
                        .liftedAt("#on")));
        return against;
    }

    /** It comes after the line: a vehicle that still stands there has not been to it. */
    static List<Reason> attending(WorkOrder order, Optional<Appointment> appointment, boolean passed, String remark) {
        List<Reason> against = new ArrayList<>(either(order, appointment));
        if (order.phase() != Phase.FINISHED && !OVER.contains(order.phase())) {
            against.add(Reason.of("line.appointmentTooEarly", Reason.WORKS_RULE, order.number())
                    .liftedAt("/orders/" + order.number()));
        }
        if (!passed && remark.isBlank()) {
            against.add(Reason.of("line.appointmentWhy", Reason.WORKS_RULE).liftedAt("#remark"));
        }
        if (remark.length() > LONGEST_REMARK) {
            against.add(Reason.of("line.appointmentTooLong", Reason.WORKS_RULE, LONGEST_REMARK)
                    .liftedAt("#remark"));
        }
        return against;
    }

    private static List<Reason> either(WorkOrder order, Optional<Appointment> appointment) {
        if (appointment.isEmpty()) {
            return List.of(Reason.of("line.appointmentUnknown", Reason.WORKS_RULE));
        }
        var against = new ArrayList<Reason>();
        if (OVER.contains(order.phase())) {
            against.add(Reason.of("line.appointmentNotNow", Reason.WORKS_RULE, order.number()));
        }
        if (appointment.get().isPassed()) {
            against.add(Reason.of(
                    "line.appointmentPassedAlready",
                    Reason.WORKS_RULE,
                    appointment.get().kind().title()));
        }
        return against;
    }
}
