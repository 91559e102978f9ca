package wainbook.station.rebinding;

import java.util.List;
import java.util.function.Predicate;
import wainbook.order.OrderSaying.Binding;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.sheet.Changes;
import wainbook.process.sheet.CheckItem;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;

/**
 * What a newer revision of its sheet would mean for a vehicle at the stage.
 *
 * @param keptKeys of all items that the revision left as they were
 * @param kept items whose entries stay
 * @param reopened items that have entries, which will not count any more
 * @param open items that are changed or new, and have no entry yet
 * @param removed items that are no longer asked
 */
public record NewerSheet(
        Binding from,
        Binding to,
        List<String> keptKeys,
        List<CheckItem> kept,
        List<CheckItem> reopened,
        List<CheckItem> open,
        List<CheckItem> removed) {

    static NewerSheet of(StageRecord record, Released inForce, Changes changes) {
        List<CheckItem> items = inForce.sheet().items();
        Predicate<CheckItem> unchanged = item -> changes.keepsEntriesOf(item.key());
        Predicate<CheckItem> begun = item -> record.item(item.key())
                .filter(state -> !state.entries().isEmpty())
                .isPresent();
        return new NewerSheet(
                record.binding(),
                new Binding(record.stage(), record.binding().sheet(), inForce.revision()),
                items.stream().filter(unchanged).map(CheckItem::key).toList(),
                items.stream().filter(unchanged.and(begun)).toList(),
                items.stream().filter(begun.and(unchanged.negate())).toList(),
                items.stream().filter(unchanged.or(begun).negate()).toList(),
                record.items().stream()
                        .map(ItemState::item)
                        .filter(item -> changes.removed().contains(item.key()))
                        .toList());
    }
}
