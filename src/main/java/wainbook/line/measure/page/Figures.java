package wainbook.line.measure.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import wainbook.engineering.Source;
import wainbook.engineering.flow.status.Indicator;
import wainbook.engineering.flow.status.LineBalance;
import wainbook.engineering.flow.status.Little;
import wainbook.line.measure.Measures;
import wainbook.line.measure.Throughput;
import wainbook.page.Words;

/** The measures of the line one by one, each with its formula, what went into it, and where it is from. */
final class Figures {

    /**
     * One measure.
     *
     * @param plain the value alone, for a spreadsheet; empty where there is none
     * @param value in words
     */
    public record Figure(
            String key,
            String name,
            String plain,
            String unit,
            String value,
            String formula,
            String inputs,
            String source) {}

    private final Measures found;
    private final List<Figure> all = new ArrayList<>();

    private Figures(Measures found) {
        this.found = found;
    }

    static List<Figure> of(Measures found) {
        var figures = new Figures(found);
        figures.pace();
        figures.time();
        figures.right();
        figures.load();
        return List.copyOf(figures.all);
    }

    private void pace() {
        Throughput line = found.throughput();
        String takt = found.taktMinutes().map(String::valueOf).orElse("");
        String worked = figure(line.workingMinutes(), 0);
        add(
                "takt",
                takt,
                "min",
                takt.isEmpty()
                        ? Words.of("line.measuresNoTakt")
                        : minutes(found.taktMinutes().get()),
                Words.of("line.measure.takt.inputs", worked));
        int made = line.finished().size();
        add(
                "made",
                String.valueOf(made),
                "",
                found.planned().isPresent()
                        ? Words.of(
                                "line.measuresMadeOf",
                                made,
                                figure(found.planned().getAsDouble(), 1),
                                percent(made / found.planned().getAsDouble()))
                        : Words.of("line.measuresMade", made),
                Words.of("line.measure.made.inputs", worked, takt.isEmpty() ? "–" : takt));
        add(
                "reworked",
                String.valueOf(line.reworked().size()),
                "",
                line.reworked().isEmpty()
                        ? Words.of("line.measuresNoneReworked")
                        : Words.of("line.measuresReworked", line.reworked().size(), String.join(", ", line.reworked())),
                Words.of("line.measure.reworked.inputs"));
        add(
                "cycle",
                plain(line.cycleMinutes(), 1),
                "min",
                line.cycleMinutes().isPresent()
                        ? minutes(line.cycleMinutes().getAsDouble())
                        : Words.of("line.measuresTooFew"),
                Words.of("line.measure.cycle.inputs", made));
    }

    private void time() {
        Throughput line = found.throughput();
        add(
                "lead",
                plain(line.leadMedian(), 0),
                "min",
                line.leadMedian().isPresent()
                        ? Words.of(
                                "line.measuresLead",
                                minutes(line.leadMedian().getAsDouble()),
                                minutes(line.leadMost().getAsDouble()))
                        : Words.of("line.measuresNoneMade"),
                Words.of("line.measure.lead.inputs", line.leadMinutes().size()));
        add(
                "wip",
                String.valueOf(line.wip().size()),
                "",
                line.wip().isEmpty()
                        ? Words.of("line.measuresNoneThere")
                        : Words.of(
                                "line.measuresWip",
                                line.wip().size(),
                                minutes(line.wipMedian().getAsDouble()),
                                line.wip().get(0).order(),
                                minutes(line.wip().get(0).minutes())),
                Words.of("line.measure.wip.inputs", line.old(), line.wip().size()));
        little(line.little());
    }

    private void little(Little law) {
        boolean any = law.windowMillis() > 0 && law.vehicles() > 0;
        add(
                "little",
                law.windowMillis() > 0 ? figure(law.meanNumber(), 3) : "",
                "",
                law.windowMillis() > 0
                        ? Words.of("line.measuresMeanNumber", figure(law.meanNumber(), 2))
                        : Words.of("line.measuresTooFew"),
                any
                        ? Words.of(
                                law.exact() && law.emptyAtBothEnds() ? "line.measuresLawHolds" : "line.measuresLawNear",
                                figure(law.meanNumber(), 3),
                                figure(law.anHour(), 4),
                                figure(law.meanHours(), 3),
                                figure(law.anHour() * law.meanHours(), 3),
                                law.atBegin(),
                                law.atEnd())
                        : Words.of("line.measuresNoneMade"));
    }

    private void right() {
        int vehicles = found.yield().passages().size();
        add(
                "firstPass",
                plain(found.indicator(Indicator.FIRST_PASS_YIELD), 4),
                "",
                share(found.indicator(Indicator.FIRST_PASS_YIELD)),
                Words.of(
                        "line.measure.firstPass.inputs",
                        found.yield().stages().stream()
                                .mapToInt(stage -> stage.firstPass())
                                .sum(),
                        vehicles));
        OptionalDouble rolled = found.yield()
                .rolled()
                .map(one -> OptionalDouble.of(one.results().rolledShare()))
                .orElse(OptionalDouble.empty());
        add(
                "rolled",
                plain(rolled, 4),
                "",
                share(rolled),
                Words.of(
                        "line.measure.rolled.inputs",
                        found.yield().stages().size(),
                        percent(found.yield().rolledLow()),
                        percent(found.yield().rolledHigh())));
    }

    private void load() {
        OptionalDouble efficiency = found.balance()
                .map(LineBalance::efficiency)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        add(
                "efficiency",
                plain(efficiency, 4),
                "",
                share(efficiency),
                found.balance()
                        .map(balance -> Words.of(
                                "line.measure.efficiency.inputs",
                                found.stations().size(),
                                found.taktMinutes().map(String::valueOf).orElse("–"),
                                percent(balance.delay()),
                                figure(balance.smoothness(), 0)))
                        .orElseGet(() -> Words.of("line.measuresNoBalance")));
        Indicator.Minutes elements = found.elements();
        for (Indicator one : MeasuresView.OF_THE_LINE) {
            OptionalDouble value = found.indicator(one);
            boolean ofAll = value.isEmpty() && !found.kind().isEmpty();
            all.add(new Figure(
                    one.name(),
                    one.standardName(),
                    plain(value, 4),
                    "",
                    ofAll ? Words.of("line.measuresOfAllKinds") : share(value),
                    one.formula(),
                    Words.of(
                            "line.measuresElements",
                            figure(elements.plannedBusy(), 0),
                            figure(elements.busy(), 0),
                            figure(elements.production(), 0),
                            figure(elements.delay(), 0),
                            Double.isNaN(elements.orderExecution()) ? "–" : figure(elements.orderExecution(), 0)),
                    Words.of("line.measuresIso")));
        }
    }

    private void add(String key, String plain, String unit, String value, String inputs) {
        all.add(new Figure(
                key,
                Words.of("line.measure." + key + ".name"),
                plain,
                unit,
                value,
                Words.of("line.measure." + key + ".formula"),
                inputs,
                key.equals("little") ? source(Little.SOURCE) : Words.of("line.measure." + key + ".source")));
    }

    static String source(Source source) {
        return source.document() + ", " + source.clause() + " (" + Words.of("line.known." + source.standing()) + ")";
    }

    static String minutes(double minutes) {
        return MeasuresView.minutes(minutes);
    }

    static String percent(double share) {
        return Words.of("line.measuresPercent", figure(100 * share, 1));
    }

    private static String share(OptionalDouble share) {
        return share.isPresent() ? percent(share.getAsDouble()) : Words.of("line.measuresTooFew");
    }

    private static String plain(OptionalDouble value, int decimals) {
        return value.isPresent() ? figure(value.getAsDouble(), decimals) : "";
    }

    static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
