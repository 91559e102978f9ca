package wainbook.order.specification.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.act.Reason;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.axle.PassengerClass;
import wainbook.order.WorkOrder;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;
import wainbook.order.duty.Way;
import wainbook.order.fitted.Match;
import wainbook.order.limit.Body;
import wainbook.order.limit.WeightRules;
import wainbook.order.specification.Bounds;
import wainbook.order.specification.LimitsThatCount;
import wainbook.order.specification.Specification;
import wainbook.order.specification.Worked;
import wainbook.order.specification.Working;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.page.chart.Chart;

/**
 * An order’s specification as its page shows it.
 *
 * @param working empty while something is missing
 * @param closed why nothing can be said any more
 * @param trace faults of a file that was sent just now
 */
public record SpecificationView(
        Worked worked,
        String packType,
        Optional<Working> working,
        Filled duty,
        Filled vehicle,
        Filled trace,
        Filled choice,
        boolean mayState,
        boolean mayReport,
        List<Reason> closed,
        List<String> traceFaults,
        List<RowView> rows) {

    /** One limit with what it is and where it comes from. */
    public record LimitLine(String what, String kg, String by, List<String> sources, List<String> asks) {}

    public static SpecificationView of(
            Worked worked,
            Optional<String> asked,
            Filled duty,
            Filled vehicle,
            Filled trace,
            Filled choice,
            boolean mayState,
            boolean mayReport,
            List<Reason> closed,
            List<String> traceFaults) {
        List<String> types = worked.library().packTypes();
        String type = asked.filter(types::contains)
                .or(() -> worked.specification()
                        .standing()
                        .map(said -> said.what().packType())
                        .filter(types::contains))
                .orElse(types.isEmpty() ? "" : types.get(0));
        Optional<Working> working = worked.working(type);
        return new SpecificationView(
                worked,
                type,
                working,
                duty,
                vehicle,
                trace,
                choice,
                mayState,
                mayReport,
                closed,
                traceFaults,
                working.map(known -> rows(worked, known)).orElse(List.of()));
    }

    private static List<RowView> rows(Worked worked, Working working) {
        SpecificationTable table = working.table();
        var steps = new Steps(table, working.duty());
        Optional<Chosen> chosen = worked.specification().standing().map(Specification.Said::what);
        return table.rows().stream()
                .map(row -> new RowView(
                        row,
                        working.asBuilt(row.packs().packs()),
                        table.axleLimitsKg(),
                        UUID.randomUUID(),
                        chosen.filter(one -> one.packs() == row.packs().packs()
                                        && one.packType().equals(working.packType()))
                                .isPresent(),
                        steps.of(row)))
                .toList();
    }

    public WorkOrder order() {
        return worked.order();
    }

    public String path() {
        return "/orders/" + order().number() + "/specification";
    }

    public long seen() {
        return worked.specification().seen();
    }

    public List<Reason> missing() {
        return worked.missing();
    }

    /** The state of the page, for its title. */
    public String state() {
        if (standing().isPresent()) {
            return Words.of(
                    "order.specified",
                    standing().get().what().packs(),
                    standing().get().what().packType());
        }
        return Words.of(working.isPresent() ? "order.toChoose" : "order.toState");
    }

    public Optional<Specification.Said<Chosen>> standing() {
        return worked.specification().standing();
    }

    /** The prediction beside the weighbridge, once both are there. */
    public List<WeighedLine> weighed() {
        return standing()
                .map(said -> WeighedLine.of(said.what(), worked.asBuilt()))
                .orElse(List.of());
    }

    /** Said at once, and again at the gate. */
    public List<Reason> routeFitsOther() {
        return worked.fitted().otherThanPlanned().stream().toList();
    }

    public String fittedTitle(Match.Line line) {
        return line.part().isPresent() ? line.title() : Words.of("order.fittedPacks", line.title());
    }

    public String fittedVerdict(Match.Line line) {
        return Words.of("order.fittedVerdict." + line.verdict().name());
    }

    public boolean outdated() {
        return worked.specification().outdated();
    }

    /** Choices before the last one, newest first. */
    public List<Specification.Said<Chosen>> earlier() {
        List<Specification.Said<Chosen>> all =
                new ArrayList<>(worked.specification().chosen());
        if (!all.isEmpty()) {
            all.remove(all.size() - 1);
        }
        Collections.reverse(all);
        return all;
    }

    public Optional<RowView> best() {
        return rows.stream().filter(RowView::feasible).findFirst();
    }

    /** How many packs, and why, in a sentence or two. */
    public String answer() {
        return best().map(row -> Words.of(
                        "order.answer",
                        row.packs(),
                        packType,
                        oddsAsked(),
                        row.rangeAtEnd(),
                        row.payload(),
                        row.boundBy()))
                .orElseGet(this::noAnswer);
    }

    private String noAnswer() {
        RowView nearest = rows.stream()
                .min(Comparator.<RowView>comparingInt(row -> row.reasons().size())
                        .thenComparing(row -> row.withMidday() ? 0 : 1)
                        .thenComparing(row -> -row.packs()))
                .orElseThrow();
        return Words.of("order.noAnswer", nearest.packs(), String.join(" ", nearest.briefly()));
    }

    /** What more packs would bring, or why fewer will not do. */
    public String why() {
        return best().map(row -> {
                    List<RowView> fewer = rows.stream()
                            .filter(other -> other.packs() < row.packs())
                            .toList();
                    List<RowView> more = rows.stream()
                            .filter(other -> other.packs() > row.packs() && other.feasible())
                            .toList();
                    String less = fewer.isEmpty()
                            ? ""
                            : Words.of(
                                    "order.whyFewer",
                                    row.packs() - 1,
                                    String.join(" ", fewer.get(fewer.size() - 1).briefly()));
                    String extra = more.isEmpty()
                            ? ""
                            : Words.of(
                                    "order.whyMore",
                                    more.stream()
                                            .map(other -> "" + other.packs())
                                            .collect(Collectors.joining(", ")));
                    return (less + " " + extra).strip();
                })
                .orElse("");
    }

    private String oddsAsked() {
        return working.orElseThrow()
                .duty()
                .worst()
                .oddsPercent()
                .stripTrailingZeros()
                .toPlainString();
    }

    public List<Option> packTypes() {
        return worked.library().packTypes().stream()
                .map(type -> new Option(type, type))
                .toList();
    }

    public Chart rangeChart() {
        return PackCharts.range(rows, dayKm());
    }

    public Chart payloadChart() {
        return PackCharts.payload(rows, working.orElseThrow().payload().kg());
    }

    public double dayKm() {
        return working.orElseThrow().table().packs().day().km();
    }

    public String dayLine() {
        Duty duty = worked.specification().duty().orElseThrow().what();
        return Words.of(
                "order.dayLine",
                RowView.one(dayKm()),
                RowView.whole(working.orElseThrow().payload().kg()),
                duty.heating().outsideC().toPlainString().replace('-', '−'),
                RowView.one(duty.charging().hours().doubleValue()),
                duty.charging().kw().toPlainString());
    }

    public boolean lifts() {
        return working.orElseThrow().chassis().rear().lifts();
    }

    public List<Integer> axleNumbers() {
        return IntStream.rangeClosed(1, working.orElseThrow().chassis().axles())
                .boxed()
                .toList();
    }

    public List<LimitLine> limits() {
        LimitsThatCount counted = working.orElseThrow().limits();
        var lines = new ArrayList<LimitLine>();
        lines.add(line(Words.of("order.limit.gross"), counted.gross()));
        for (int i = 0; i < counted.axlesKg().size(); i++) {
            lines.add(line(Words.of("order.axle", i + 1), counted.axlesKg().get(i)));
        }
        counted.rearGroup().ifPresent(group -> lines.add(line(Words.of("order.limit.rearGroup"), group)));
        return lines;
    }

    private static LimitLine line(String what, LimitsThatCount.Limit limit) {
        return new LimitLine(
                what,
                RowView.whole(limit.kg()),
                Words.of("order.limitBy." + limit.by().name())
                        + limit.legal()
                                .kg()
                                .filter(kg -> limit.by() != LimitsThatCount.By.LAW)
                                .map(kg -> ", " + Words.of("order.limitLaw", kg))
                                .orElse(""),
                limit.legal().rules().stream()
                        .map(rule -> Words.of(
                                "order.limitSource",
                                rule.id(),
                                rule.source().document(),
                                rule.source().clause(),
                                Words.of("order.standing." + rule.source().standing())))
                        .toList(),
                limit.legal().asks().stream()
                        .map(ask -> Words.of("order.limitAsk." + ask.name()))
                        .toList());
    }

    public List<Option> ways() {
        return Arrays.stream(Way.values())
                .map(way -> new Option(way.name(), Words.of("order.way." + way.name())))
                .toList();
    }

    public List<Integer> legs() {
        return IntStream.rangeClosed(1, DutyForm.LEGS).boxed().toList();
    }

    public List<Option> rooms() {
        return options(Duty.Room.values(), "order.room.");
    }

    public List<Option> heaters() {
        return options(Duty.Heater.values(), "order.heater.");
    }

    public List<Option> bodies() {
        return options(Body.values(), "order.body.");
    }

    public List<Option> markets() {
        return WeightRules.SETS.stream().map(set -> new Option(set, set)).toList();
    }

    public List<Option> classes() {
        return Arrays.stream(PassengerClass.values())
                .map(one -> new Option(one.name(), Words.of("order.passengerClass", one.name(), one.personKg())))
                .toList();
    }

    public List<Option> truths() {
        return List.of(new Option("true", Words.of("page.yes")), new Option("false", Words.of("page.no")));
    }

    private static <E extends Enum<E>> List<Option> options(E[] values, String prefix) {
        return Arrays.stream(values)
                .map(one -> new Option(one.name(), Words.of(prefix + one.name())))
                .toList();
    }

    public boolean bus() {
        return ChassisForm.bus(order());
    }

    public Optional<Instant> dutyAt() {
        return worked.specification().duty().map(Specification.Said::at);
    }

    public List<String> legFields() {
        return DutyForm.LEG_FIELDS;
    }

    public String legValue(int leg, String field) {
        return duty.value("leg" + leg + field);
    }

    public String legLabel(int leg, String field) {
        return label("leg" + leg + field);
    }

    public boolean legWrong(int leg, String field) {
        return duty.form().fault("leg" + leg + field).isPresent();
    }

    /** Folded once it is stated and nothing in it is wrong. */
    public boolean openDuty() {
        return worked.specification().duty().isEmpty()
                || !duty.right()
                || !duty.reasons().isEmpty();
    }

    public boolean openVehicle() {
        return worked.specification().chassis().isEmpty()
                || !vehicle.right()
                || !vehicle.reasons().isEmpty();
    }

    public boolean openTrace() {
        return !trace.right() || !trace.reasons().isEmpty();
    }

    public boolean hasTrace() {
        return worked.specification()
                .duty()
                .flatMap(said -> said.what().recorded())
                .isPresent();
    }

    public String traceFile() {
        return worked.specification()
                .duty()
                .flatMap(said -> said.what().recorded())
                .map(way -> way.file().sha256())
                .orElse("");
    }

    public String label(String field) {
        return Bounds.label(field);
    }
}
