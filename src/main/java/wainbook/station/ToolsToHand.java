package wainbook.station;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.ledger.Entry;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Used;
import wainbook.works.Instrument;
import wainbook.works.InstrumentRow;
import wainbook.works.InstrumentRule;

/** The instruments of the kind that an item needs, those that are fit for it first. */
record ToolsToHand(List<Tool> tools) {

    /** One of them. */
    record Tool(InstrumentRow row, boolean fit) {
        Option option() {
            return new Option(row.code, fit ? row.inWords() : Words.of("station.notForThis", row.inWords()));
        }
    }

    static ToolsToHand of(
            ToolNeeded needed,
            List<InstrumentRow> ofKind,
            Function<String, Optional<Instrument>> register,
            LocalDate today) {
        return new ToolsToHand(ofKind.stream()
                .map(row -> new Tool(
                        row,
                        InstrumentRule.against(register.apply(row.code), needed.kind(), needed.values(), today)
                                .isEmpty()))
                .sorted(Comparator.comparing(Tool::fit).reversed())
                .toList());
    }

    List<Option> options() {
        return tools.stream().map(Tool::option).toList();
    }

    /** The one that is still in this person's hand, by what they recorded last at this stage, if it is fit. */
    Optional<String> inHandOf(String person, StageRecord record) {
        return record.items().stream()
                .flatMap(state -> state.entries().stream())
                .filter(entry -> entry.moment().who().equals(person))
                .filter(entry -> used(entry).filter(this::fit).isPresent())
                .max(Comparator.comparingLong(Entry::number))
                .flatMap(ToolsToHand::used);
    }

    private boolean fit(String code) {
        return tools.stream().anyMatch(tool -> tool.fit() && tool.row().code.equals(code));
    }

    private static Optional<String> used(Entry entry) {
        return entry.saying() instanceof Result result ? result.basis().used().map(Used::instrument) : Optional.empty();
    }
}
