package wainbook.order.specification.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import wainbook.act.Reason;
import wainbook.engineering.specification.ColdDay;
import wainbook.engineering.specification.PackLife;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.order.WorkOrder;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;
import wainbook.order.fitted.Match;
import wainbook.order.specification.Bounds;
import wainbook.order.specification.RuledOutReasons;
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
        Optional<PackLife> life = working.life();
        Optional<Chosen> chosen = worked.specification().standing().map(Specification.Said::what);
        return table.rows().stream()
                .map(row -> new RowView(
                        row,
                        working.asBuilt(row.packs().packs()),
                        table.axleLimitsKg(),
                        row.ruledOut().stream()
                                .map(out -> RuledOutReasons.of(out, row, working))
                                .toList(),
                        life.map(known -> known.of(row.packs())),
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

    /** How many packs it takes, in words. */
    public Answer answer() {
        return new Answer(rows, packType, working.orElseThrow().duty().worst().oddsPercent());
    }

    public Choices choices() {
        return new Choices();
    }

    public LegFields legs() {
        return new LegFields(duty);
    }

    public List<LimitLine> limits() {
        return LimitLine.of(
                working.orElseThrow().limits(),
                working.orElseThrow().inFigures().fastestKmh());
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

    /** What the figures of the cold count, in words. */
    public String coldLine() {
        Duty duty = working.orElseThrow().duty();
        ColdDay coldest = working.orElseThrow().table().packs().day().coldest();
        String outside = duty.heating().outsideC().toPlainString().replace('-', '−');
        return duty.packsInTheCold()
                .map(packs -> switch (packs) {
                    case WARMED -> Words.of("order.coldWarmed", outside, RowView.one(coldest.conditioningKwh()));
                    case AS_THE_AIR -> Words.of("order.coldAsTheAir", outside, RowView.one(100 * coldest.packShare()));
                })
                .orElseGet(() -> Words.of("order.coldNotAsked", outside));
    }

    public boolean coldAsked() {
        return working.orElseThrow().duty().packsInTheCold().isPresent();
    }

    public boolean ageingStated() {
        return working.orElseThrow().figures().ageing().isPresent();
    }

    public boolean useStated() {
        return working.orElseThrow().duty().use().isPresent();
    }

    /** Until when each number of packs lasts; empty where ageing or days were not stated. */
    public Optional<LifeView> life() {
        return working.flatMap(Working::life).map(life -> LifeView.of(life, rows, working.orElseThrow()));
    }

    /** The row that is looked at first: what was chosen, or the fewest that will do. */
    public int shownPacks() {
        return RowView.shown(rows);
    }

    public TyreFields tyres() {
        return new TyreFields(vehicle);
    }

    public boolean lifts() {
        return working.orElseThrow().chassis().rear().lifts();
    }

    public List<Integer> axleNumbers() {
        return IntStream.rangeClosed(1, working.orElseThrow().chassis().axles())
                .boxed()
                .toList();
    }

    public boolean bus() {
        return ChassisForm.bus(order());
    }

    public Optional<Instant> dutyAt() {
        return worked.specification().duty().map(Specification.Said::at);
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
