package wainbook.line.awaited;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/** What stands against saying that a part is missing, for when it is expected, and that it came. */
final class Against {

    private static final Set<Phase> OVER = Set.of(Phase.HANDED_OVER, Phase.DONOR_REJECTED);
    private static final int LONGEST_WORDS = 200;
    private static final int LONGEST_REMARK = 2000;
    /** As far as the forecast looks: a day beyond it is a slip of the pen. */
    private static final int DAYS_AHEAD = 180;

    private Against() {}

    static List<Reason> missing(
            WorkOrder order,
            Optional<StagesAhead.Stage> stage,
            String what,
            Optional<String> part,
            LocalDate expectedOn,
            LocalDate today) {
        List<Reason> against = new ArrayList<>(over(order));
        if (stage.isEmpty()) {
            against.add(Reason.of("line.awaitedNoStage", Reason.WORKS_RULE, order.number())
                    .liftedAt("#stage"));
        }
        stage.filter(StagesAhead.Stage::signed)
                .ifPresent(one -> against.add(Reason.of("line.awaitedSigned", Reason.WORKS_RULE, one.title())
                        .liftedAt("#stage")));
        if (what.isBlank()) {
            against.add(Reason.of("line.awaitedNothing", Reason.WORKS_RULE).liftedAt("#what"));
        }
        if (what.length() > LONGEST_WORDS) {
            against.add(Reason.of("line.awaitedTooLong", Reason.WORKS_RULE, LONGEST_WORDS)
                    .liftedAt("#what"));
        }
        stage.ifPresent(one -> part.filter(code -> !one.parts().contains(code))
                .ifPresent(code -> against.add(Reason.of("line.awaitedNoPart", Reason.WORKS_RULE, code, one.title())
                        .liftedAt("#part"))));
        against.addAll(day(expectedOn, today));
        return against;
    }

    static List<Reason> moving(WorkOrder order, Optional<AwaitedPart> part, LocalDate expectedOn, LocalDate today) {
        List<Reason> against = new ArrayList<>(open(order, part));
        against.addAll(day(expectedOn, today));
        return against;
    }

    static List<Reason> coming(WorkOrder order, Optional<AwaitedPart> part, String remark) {
        List<Reason> against = new ArrayList<>(open(order, part));
        if (remark.length() > LONGEST_REMARK) {
            against.add(Reason.of("line.awaitedTooLong", Reason.WORKS_RULE, LONGEST_REMARK)
                    .liftedAt("#remark"));
        }
        return against;
    }

    private static List<Reason> open(WorkOrder order, Optional<AwaitedPart> part) {
        List<Reason> against = new ArrayList<>(over(order));
        if (part.isEmpty()) {
            against.add(Reason.of("line.awaitedUnknown", Reason.WORKS_RULE, order.number()));
        }
        part.filter(one -> !one.isOpen())
                .ifPresent(one -> against.add(Reason.of("line.awaitedCame", Reason.WORKS_RULE, one.what())));
        return against;
    }

    private static List<Reason> over(WorkOrder order) {
        return OVER.contains(order.phase())
                ? List.of(Reason.of("line.awaitedOver", Reason.WORKS_RULE, order.number()))
                : List.of();
    }

    private static List<Reason> day(LocalDate expectedOn, LocalDate today) {
        if (expectedOn.isBefore(today)) {
            return List.of(Reason.of("line.awaitedPast", Reason.WORKS_RULE).liftedAt("#expectedOn"));
        }
        return expectedOn.isAfter(today.plusDays(DAYS_AHEAD))
                ? List.of(Reason.of("line.awaitedTooFar", Reason.WORKS_RULE, DAYS_AHEAD)
                        .liftedAt("#expectedOn"))
                : List.of();
    }
}
