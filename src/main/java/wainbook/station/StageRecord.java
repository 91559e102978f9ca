package wainbook.station;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Counted;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.determination.GivenInputs;

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
            Map<String, SheetLine> lines = new LinkedHashMap<>();
            sheets.sheet(binding.sheet(), binding.revision()).items().stream()
                    .map(item -> new SheetLine(binding.sheet(), binding.revision(), item))
                    .forEach(line -> lines.put(line.name(), line));
            broughtOver(history, stage, sheets).forEach(line -> lines.putIfAbsent(line.name(), line));
            return new StageRecord(
                    stage,
                    binding,
                    counted(lines.values().stream()
                            .map(line -> ItemFold.of(history, order, stage, line))
                            .toList()));
        });
    }

    /** What is counted again is asked as what was counted before. */
    private static List<ItemState> counted(List<ItemState> states) {
        return states.stream()
                .map(state -> state.item().asks() instanceof Ask.Recount recount
                        ? state.asking(recount.after(count(states, recount.item())))
                        : state)
                .toList();
    }

    private static Optional<BigDecimal> count(List<ItemState> states, String key) {
        return states.stream()
                .filter(state -> state.key().equals(key))
                .flatMap(state -> state.passing().stream())
                .filter(entry -> entry.saying() instanceof Counted)
                .map(entry -> ((Counted) entry.saying()).quantity())
                .findFirst();
    }

    public Optional<ItemState> item(String key) {
        return items.stream().filter(state -> state.key().equals(key)).findFirst();
    }

    /** The item by its name across all sheets. */
    Optional<ItemState> line(String line) {
        return items.stream().filter(state -> state.line().name().equals(line)).findFirst();
    }

    /** What the sheet and its earlier items give to a determination on this vehicle. */
    public GivenInputs given(Ask.Determine ask) {
        return GivenInputs.of(ask, this::determined);
    }

    /** The insulation resistances by other methods or of other circuits: the vehicle is judged by the lowest of them. */
    public Stream<String> besides(CheckItem inHand) {
        return items.stream()
                .filter(state -> !state.key().equals(inHand.key())
                        && inHand.asks() instanceof Ask.Determine own
                        && own.method().insulation())
                .flatMap(state -> determined(state.key()).stream()
                        .filter(said -> said.method().insulation())
                        .map(said -> state.item().title() + ": " + DeterminedInWords.figures(said)));
    }

    private Optional<Determined> determined(String key) {
        return item(key)
                .flatMap(ItemState::passing)
                .map(Entry::saying)
                .filter(Determined.class::isInstance)
                .map(Determined.class::cast);
    }

    public List<ItemState> unsettled() {
        return items.stream().filter(state -> !state.status().settled()).toList();
    }

    public int settledCount() {
        return items.size() - unsettled().size();
    }

    private static List<SheetLine> broughtOver(History history, String stage, Sheets sheets) {
        var lines = new ArrayList<SheetLine>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof ReSequenced said && said.toStage().equals(stage)) {
                lines.add(line(said.about(), sheets));
            } else if (entry.saying() instanceof CarriedOver said
                    && said.toStage().equals(stage)) {
                lines.add(line(said.about(), sheets));
            }
        }
        return lines;
    }

    private static SheetLine line(About about, Sheets sheets) {
        CheckItem item = sheets.sheet(about.sheet(), about.revision())
                .item(about.item())
                .orElseThrow(() -> new IllegalStateException("no item " + about.item() + " in its own sheet"));
        return new SheetLine(about.sheet(), about.revision(), item);
    }
}
