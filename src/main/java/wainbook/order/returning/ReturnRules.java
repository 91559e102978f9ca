package wainbook.order.returning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.Route;

/** Whether a vehicle may come back under a new order. */
final class ReturnRules {

    private static final int LONGEST = 500;

    private ReturnRules() {}

    /** What stands against any new order for the vehicle; asked before a form is drawn. */
    static List<Reason> against(WorkOrder earlier) {
        if (earlier.links().onward().isPresent()) {
            String next = earlier.links().onward().get();
            return List.of(Reason.of("order.returnedAlready", Reason.WORKS_RULE, earlier.number(), next)
                    .liftedAt("/orders/" + next));
        }
        return earlier.phase() == Phase.HANDED_OVER
                ? List.of()
                : List.of(Reason.of("order.notHandedOver", Reason.WORKS_RULE, earlier.number())
                        .liftedAt("/orders/" + earlier.number()));
    }

    /** @param bare the item at which a vehicle with sources aboard would stand on this route; absent where there is none */
    static List<Reason> against(
            Returning.ToReturn asked,
            WorkOrder earlier,
            Optional<Route> route,
            Optional<Route.Step> bare,
            boolean taken) {
        var against = new ArrayList<>(against(earlier));
        if (taken) {
            against.add(Reason.of("order.numberTaken", Reason.WORKS_RULE, asked.number())
                    .liftedAt("#number"));
        }
        if (route.isEmpty()) {
            against.add(Reason.of("order.routeUnknown", Reason.WORKS_RULE, asked.route())
                    .liftedAt("#route"));
        } else if (!route.get().vehicleKind().equals(earlier.ordered().vehicleKind())) {
            against.add(Reason.of(
                            "order.routeOfAnotherKind",
                            Reason.WORKS_RULE,
                            asked.route(),
                            earlier.ordered().vehicleKind())
                    .liftedAt("#route"));
        } else {
            bare.ifPresent(step -> against.add(Reason.of(
                            "order.routeForDonors",
                            Reason.WORKS_RULE,
                            asked.route(),
                            step.item().title(),
                            step.sheet())
                    .liftedAt("#route")));
        }
        if (asked.operator().isBlank()) {
            against.add(Reason.of("order.operatorMissing", Reason.WORKS_RULE).liftedAt("#operator"));
        }
        if (asked.reason().isBlank() || asked.reason().length() > LONGEST) {
            against.add(
                    Reason.of("order.returnReason", Reason.WORKS_RULE, LONGEST).liftedAt("#reason"));
        }
        return against;
    }
}
