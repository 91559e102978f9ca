package wainbook.line.milestone.page;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.MilestoneLook.Passing;
import wainbook.line.milestone.MilestoneLook.Way;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Leaf;
import wainbook.page.Option;
import wainbook.page.Words;

/** Milestones of orders, one leaf of them. */
public record MilestonesView(Form form, boolean filtered, String csv, List<Way> ways, Leaf leaf, boolean mayArrange) {

    static final int LEAF_ROWS = 40;

    public List<Milestone> milestones() {
        return List.of(Milestone.values());
    }

    public static String word(Milestone milestone) {
        return Words.of("line.milestone." + milestone.name());
    }

    public String title(Milestone milestone) {
        return word(milestone);
    }

    public List<Option> choices() {
        return Arrays.stream(Milestone.values())
                .map(value -> new Option(value.name(), word(value)))
                .toList();
    }

    public List<Option> phases() {
        return Arrays.stream(WorkOrder.Phase.values())
                .map(value -> new Option(value.name(), OrderList.word(value)))
                .toList();
    }

    public String promised(Passing passing) {
        return passing.promisedOn().map(Formats::date).orElse("");
    }

    static List<String> cells(Way way, Passing passing) {
        return List.of(
                way.order().number,
                way.order().operator,
                way.order().vehicleKind,
                passing.milestone().name(),
                passing.promisedOn().map(Object::toString).orElse(""),
                passing.expected().map(Object::toString).orElse(""),
                passing.reached().map(row -> row.reachedAt.toString()).orElse(""),
                passing.reached().map(row -> String.valueOf(row.entryNumber)).orElse(""),
                Objects.toString(way.order().earlier, ""));
    }
}
