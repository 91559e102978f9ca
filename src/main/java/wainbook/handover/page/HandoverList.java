package wainbook.handover.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.handover.Leaving;
import wainbook.handover.document.DocumentSet;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Form;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Words;

/** Vehicles that will be handed over, with how far their documents are; one leaf of the list. */
public record HandoverList(String search, Optional<Phase> phase, Promised promised, List<Row> rows, Leaf leaf) {

    static final int LEAF_ROWS = 50;

    /** The phases in which a vehicle's documents are anybody's business, most of them before it is handed over. */
    static final List<Phase> PHASES = List.of(Phase.FINISHED, Phase.OFF_LINE, Phase.ON_LINE, Phase.HANDED_OVER);

    /**
     * One vehicle.
     *
     * @param missing documents that keep it from being handed over; empty where its market has no rules here
     * @param asking documents that somebody has to see to, and that keep it from nothing
     * @param late whether it should have gone before today
     * @param leaving when it will be ready, where that is forecast
     * @param ending documents in hand that end before that
     */
    public record Row(
            WorkOrderRow order,
            Optional<Integer> missing,
            int asking,
            int settled,
            long overdue,
            boolean late,
            Optional<Leaving.Days> leaving,
            int ending) {

        static Row of(WorkOrderRow order, Optional<DocumentSet> set, LocalDate today, Optional<Leaving.Days> leaving) {
            return new Row(
                    order,
                    set.map(known -> known.barring().size()),
                    set.map(known -> known.asking().size()).orElse(0),
                    set.map(known -> known.settled().size()).orElse(0),
                    handedOver(order) ? set.map(known -> known.overdueOn(today)).orElse(0L) : 0,
                    !handedOver(order) && order.promisedOn.isBefore(today),
                    leaving,
                    leaving.flatMap(days -> set.map(
                                    known -> known.endingBefore(days.late()).size()))
                            .orElse(0));
        }

        public String path() {
            return "/handover/" + order.number;
        }

        /** Whether it will be late, where it is not late already. */
        public boolean afterPromise() {
            return !late
                    && leaving.filter(days -> days.likely().isAfter(order.promisedOn))
                            .isPresent();
        }

        /** Only while it is still to be decided. */
        public boolean waits() {
            return !handedOver(order);
        }

        public String standing() {
            return missing.map(count -> Words.of("handover.missingShort", count))
                    .orElseGet(() -> Words.of("handover.noRulesShort"));
        }

        public boolean complete() {
            return missing.filter(count -> count == 0).isPresent();
        }

        List<String> cells() {
            return List.of(
                    order.number,
                    order.operator,
                    order.phaseWord(),
                    order.promisedOn.toString(),
                    waits() ? missing.map(String::valueOf).orElse("") : "",
                    String.valueOf(asking),
                    String.valueOf(settled),
                    String.valueOf(overdue),
                    leaving.map(days -> days.likely().toString()).orElse(""),
                    leaving.map(days -> days.late().toString()).orElse(""),
                    String.valueOf(ending));
        }

        private static boolean handedOver(WorkOrderRow order) {
            return order.phase == Phase.HANDED_OVER;
        }
    }

    public boolean filtered() {
        return !search.isEmpty() || phase.isPresent() || promised != Promised.WHENEVER;
    }

    public Form form() {
        return Form.EMPTY
                .with("search", search)
                .with("phase", phase.map(Phase::name).orElse(""))
                .with("promised", promised.name());
    }

    public List<Option> promisedOptions() {
        return Arrays.stream(Promised.values())
                .map(one -> new Option(one.name(), one.word()))
                .toList();
    }

    public List<Option> phases() {
        return PHASES.stream()
                .map(one -> new Option(one.name(), OrderList.word(one)))
                .toList();
    }

    public String csv() {
        return "/handover.csv" + query(search, phase, promised);
    }

    /** What is shown when nothing is chosen: what is not handed over yet. */
    static List<Phase> shown(Optional<Phase> phase) {
        return phase.map(List::of).orElseGet(() -> PHASES.subList(0, 3));
    }

    static String query(String search, Optional<Phase> phase, Promised promised) {
        return "?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&phase="
                + phase.map(Phase::name).orElse("") + "&promised=" + promised;
    }
}
