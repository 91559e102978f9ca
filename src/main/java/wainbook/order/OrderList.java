package wainbook.order;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Form;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Words;

/** Work orders as a list that was searched, one leaf of it. */
public record OrderList(String search, Optional<Phase> phase, List<WorkOrderRow> rows, Leaf leaf, boolean mayMake) {

    public static final int LEAF_ROWS = 50;

    public boolean filtered() {
        return !search.isEmpty() || phase.isPresent();
    }

    public Form form() {
        return Form.EMPTY
                .with("search", search)
                .with("phase", phase.map(Phase::name).orElse(""));
    }

    public List<Option> phases() {
        return Arrays.stream(Phase.values())
                .map(value -> new Option(value.name(), word(value)))
                .toList();
    }

    public String csv() {
        return "/orders.csv" + query(search, phase);
    }

    public static String query(String search, Optional<Phase> phase) {
        return "?search=" + URLEncoder.encode(search, StandardCharsets.UTF_8) + "&phase="
                + phase.map(Phase::name).orElse("");
    }

    /** A phase in words. */
    public static String word(Phase phase) {
        return Words.of("order.phase." + phase.name());
    }
}
