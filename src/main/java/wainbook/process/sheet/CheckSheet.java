package wainbook.process.sheet;

import java.util.List;
import java.util.Optional;
import wainbook.process.Code;

/** What is done and recorded at one stage, in the order in which it is shown. */
public record CheckSheet(String code, String title, List<CheckItem> items, String stage) {

    public CheckSheet {
        Code.checked("a check sheet", code);
        Code.titled("a check sheet", title);
        Code.checked("a stage", stage);
        if (items.isEmpty()) {
            throw new IllegalArgumentException("a check sheet has at least one item");
        }
        items = List.copyOf(items);
    }

    public Optional<CheckItem> item(String key) {
        return items.stream().filter(item -> item.key().equals(key)).findFirst();
    }

    public int plannedMinutes() {
        return items.stream().mapToInt(CheckItem::plannedMinutes).sum();
    }
}
