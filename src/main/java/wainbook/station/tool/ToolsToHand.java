package wainbook.station.tool;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.ledger.Entry;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.joint.Acceptance;
import wainbook.process.joint.GuardedLimits;
import wainbook.process.joint.Joint;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Used;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.InstrumentRule;

/** The instruments of the kind that an item needs, those that are fit for it first. */
public record ToolsToHand(List<Tool> tools) {

    /**
     * One of them.
     *
     * @param accepting what it is accepted at, where it is fit and its uncertainty is known
     */
    record Tool(InstrumentRow row, boolean fit, Optional<Accepting> accepting) {
        Option option() {
            if (!fit) {
                return new Option(row.code, Words.of("station.notForThis", row.inWords()));
            }
            return new Option(
                    row.code,
                    accepting
                            .filter(known -> !known.limits().passesNothing())
                            .map(known -> Words.of(
                                    "station.acceptsBetween",
                                    row.code,
                                    known.limits().lowerShown(),
                                    known.limits().upperShown(),
                                    row.title,
                                    row.due == null ? "–" : Formats.date(row.due)))
                            .orElse(row.inWords()));
        }
    }

    /** What a joint is accepted at with one tool. */
    public record Accepting(String tool, Acceptance acceptance) {

        public GuardedLimits limits() {
            return acceptance.guarded();
        }

        /** The range that passes, with the reason for what is cut off. */
        public String inWords() {
            if (limits().passesNothing()) {
                return Words.of("station.acceptsNothing", tool, percent());
            }
            String key = acceptance.joint().jointClass().decisionFactor().signum() == 0
                    ? "station.acceptsWholly"
                    : "station.accepts";
            return Words.of(key, tool, percent(), limits().lowerShown(), limits().upperShown());
        }

        public String calculation() {
            return limits().calculation(acceptance.joint().torque().targetNm());
        }

        private String percent() {
            return acceptance.toolPercent().toPlainString();
        }
    }

    public static ToolsToHand of(
            ToolNeeded needed,
            List<InstrumentRow> ofKind,
            Function<String, Optional<Instrument>> register,
            LocalDate today,
            Optional<Joint> tightened) {
        return new ToolsToHand(ofKind.stream()
                .map(row -> {
                    Optional<Instrument> known = register.apply(row.code);
                    boolean fit = InstrumentRule.against(known, needed.kind(), needed.values(), today)
                            .isEmpty();
                    Optional<Accepting> accepting = known.filter(tool -> fit)
                            .flatMap(Instrument::accuracyPercent)
                            .flatMap(percent ->
                                    tightened.map(joint -> new Accepting(row.code, new Acceptance(joint, percent))));
                    return new Tool(row, fit, accepting);
                })
                .sorted(Comparator.comparing(Tool::fit).reversed())
                .toList());
    }

    public List<Option> options() {
        return tools.stream().map(Tool::option).toList();
    }

    public Optional<Accepting> accepting(String code) {
        return tools.stream()
                .filter(tool -> tool.row().code.equals(code))
                .findFirst()
                .flatMap(Tool::accepting);
    }

    /** The one that is still in this person's hand, by what they recorded last at this stage, if it is fit. */
    public Optional<String> inHandOf(String person, StageRecord record) {
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
