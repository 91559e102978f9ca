package wainbook.station;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder;
import wainbook.process.CheckItem;
import wainbook.process.CheckSheet;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.ReSequenced;

/** How the work of one stage stands on one vehicle: every item of its sheet, and what came over from earlier stages. */
public record StageRecord(String stage, Binding binding, List<ItemState> items) {

    /** Finds a sheet in the revision that a vehicle is bound to. */
    public interface Sheets {
        CheckSheet sheet(String code, int revision);
    }

    public StageRecord {
        items = List.copyOf(items);
    }

    /** The record of a stage that the vehicle has been at or is at; empty before that. */
    public static Optional<StageRecord> of(History history, WorkOrder order, String stage, Sheets sheets) {
        return Optional.ofNullable(order.bindings().get(stage)).map(binding -> {
            Map<String, CheckItem> lines = new LinkedHashMap<>();
            sheets.sheet(binding.sheet(), binding.revision())
                    .items()
                    .forEach(item -> lines.put(binding.sheet() + "/" + item.key(), item));
            broughtOver(history, stage, sheets).forEach(lines::putIfAbsent);
            var items = new ArrayList<ItemState>();
            lines.forEach((line, item) -> items.add(ItemFold.of(history, order, stage, line, item)));
            return new StageRecord(stage, binding, items);
        });
    }

    public Optional<ItemState> item(String key) {
        return items.stream().filter(state -> state.key().equals(key)).findFirst();
    }

    /** The item by its name across all sheets. */
    Optional<ItemState> line(String line) {
        return items.stream().filter(state -> state.line().equals(line)).findFirst();
    }

    public List<ItemState> unsettled() {
        return items.stream().filter(state -> !state.status().settled()).toList();
    }

    public int settledCount() {
        return items.size() - unsettled().size();
    }

    /** What was said when a line came to this stage from an earlier one; empty for the stage’s own lines. */
    Optional<About> cameAs(History history, String line) {
        return Optional.ofNullable(cameOver(history, stage).get(line));
    }

    private static Map<String, CheckItem> broughtOver(History history, String stage, Sheets sheets) {
        Map<String, CheckItem> lines = new LinkedHashMap<>();
        cameOver(history, stage).forEach((line, about) -> {
            String key = about.item();
            CheckItem item = sheets.sheet(about.sheet(), about.revision())
                    .item(key)
                    .orElseThrow(() -> new IllegalStateException("no item " + key + " in its own sheet"));
            lines.put(line, item);
        });
        return lines;
    }

    private static Map<String, About> cameOver(History history, String stage) {
        Map<String, About> lines = new LinkedHashMap<>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof ReSequenced said && said.toStage().equals(stage)) {
                lines.put(said.about().line(), said.about());
            } else if (entry.saying() instanceof CarriedOver said
                    && said.toStage().equals(stage)) {
                lines.put(said.about().line(), said.about());
            }
        }
        return lines;
    }
}
