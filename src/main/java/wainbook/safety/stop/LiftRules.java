package wainbook.safety.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.hold.Holding;
import wainbook.safety.stop.Stopping.ToLift;
import wainbook.works.Person;
import wainbook.works.Role;

/** Whether a stop of a place may be lifted: by the same people as a hold for safety, and with what was done. */
final class LiftRules {

    private static final int LONGEST = 2000;

    private LiftRules() {}

    static List<Reason> against(Optional<Stop> stop, ToLift asked, Person who) {
        if (stop.isEmpty()) {
            return List.of(Reason.of("safety.stopNotFound", Reason.WORKS_RULE, asked.stop()));
        }
        var against = new ArrayList<Reason>(mayLift(stop.get(), who));
        if (asked.done().isBlank() || asked.done().length() > LONGEST) {
            against.add(Reason.of("safety.doneMissing", Reason.WORKS_RULE).liftedAt("#done"));
        }
        return against;
    }

    static List<Reason> mayLift(Stop stop, Person who) {
        var against = new ArrayList<Reason>();
        if (!stop.open()) {
            against.add(Reason.of("safety.liftedAlready", Reason.WORKS_RULE, stop.number()));
        }
        var may = Holding.mayRelease(HoldKind.SAFETY);
        String roles = may.stream().map(Role::word).sorted().collect(Collectors.joining(", "));
        if (who.roles().stream().noneMatch(may::contains)) {
            against.add(Reason.of("safety.mayNotLift", Reason.WORKS_RULE, stop.number(), roles));
        }
        if (Holding.takesAnother(HoldKind.SAFETY, stop.stopped().moment().who(), who.number())) {
            against.add(Reason.of("safety.ownStop", Reason.WORKS_RULE, stop.number(), roles));
        }
        return against;
    }
}
