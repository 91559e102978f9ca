package wainbook.quality.yields.page;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.statistics.DefectRate;
import wainbook.gate.passage.Yield;
import wainbook.gate.passage.Yield.StageYield;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.page.chart.Bars;
import wainbook.page.chart.Bars.Bar;
import wainbook.quality.yields.Pareto;
import wainbook.quality.yields.Pareto.By;

/**
 * Yields as a page shows them.
 *
 * @param titles of stages and items, by their codes
 */
public record YieldView(Yield yield, Pareto pareto, Form form, List<Option> kinds, Map<String, String> titles) {

    private static final int DRAWN = 12;

    public boolean any() {
        return !yield.stages().isEmpty();
    }

    public List<StageYield> stages() {
        return yield.stages();
    }

    public String title(String code) {
        return code.isEmpty() ? Words.of("quality.besideSheet") : titles.getOrDefault(code, code);
    }

    public String name(Pareto.Row row) {
        if (pareto.by() == By.PART && row.code().isEmpty()) {
            return Words.of("quality.noPart");
        }
        return pareto.by() == By.CAUSE ? Words.of("quality.slip." + row.code()) : title(row.code());
    }

    static String percent(double share) {
        return Words.of("quality.percent", String.format(Locale.ROOT, "%.1f", 100 * share));
    }

    public String share(StageYield stage) {
        return percent(stage.share().results().rate());
    }

    public String interval(StageYield stage) {
        var found = stage.share().results();
        return Words.of("quality.interval", percent(found.exactLow()), percent(found.exactHigh()));
    }

    public String rolled() {
        return percent(yield.rolled().orElseThrow().results().rolledShare());
    }

    public String rolledInterval() {
        return Words.of("quality.interval", percent(yield.rolledLow()), percent(yield.rolledHigh()));
    }

    private static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    public String perVehicle() {
        return figure(rate().perUnit(), 2);
    }

    private DefectRate.Results rate() {
        return yield.defectRate().orElseThrow().results();
    }

    public String perVehicleInterval() {
        return Words.of("quality.interval", figure(rate().perUnitLow(), 2), figure(rate().perUnitHigh(), 2));
    }

    public String expected() {
        return percent(rate().firstPassShare());
    }

    public String expectedInterval() {
        return Words.of(
                "quality.interval", percent(Math.exp(-rate().perUnitHigh())), percent(Math.exp(-rate().perUnitLow())));
    }

    public String perMillion() {
        return figure(rate().perMillion(), 0);
    }

    public String perMillionInterval() {
        double each = 1e6 / yield.opportunities();
        return Words.of(
                "quality.interval", figure(rate().perUnitLow() * each, 0), figure(rate().perUnitHigh() * each, 0));
    }

    public List<Step> steps() {
        return Stream.of(
                        yield.rolled().orElseThrow().steps(),
                        yield.defectRate().orElseThrow().steps())
                .flatMap(List::stream)
                .toList();
    }

    public List<Source> sources() {
        return Stream.of(
                        stages().get(0).share().sources(),
                        yield.rolled().orElseThrow().sources(),
                        yield.defectRate().orElseThrow().sources())
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    public String known(Source source) {
        return Words.of("quality.known." + source.standing());
    }

    public Bars stageBars() {
        StageYield lowest = stages().stream()
                .min(Comparator.comparing(stage -> stage.share().results().rate()))
                .orElseThrow();
        return new Bars(
                Words.of("quality.yieldBars"),
                Words.of(
                        "quality.yieldBarsText",
                        title(lowest.stage()),
                        figure(100 * lowest.share().results().rate(), 1)),
                "%",
                1,
                stages().stream()
                        .map(stage -> new Bar(
                                title(stage.stage()), stage.share().results().rate(), share(stage)))
                        .toList());
    }

    public Bars paretoBars() {
        Pareto.Row first = pareto.rows().get(0);
        return new Bars(
                Words.of(
                        "quality.paretoBars",
                        Words.of("quality.paretoBy." + pareto.by().name())),
                Words.of("quality.paretoBarsText", name(first), first.count()),
                "",
                first.count(),
                pareto.rows().stream()
                        .limit(DRAWN)
                        .map(row -> new Bar(name(row), row.count(), String.valueOf(row.count())))
                        .toList());
    }

    public String upTo(Pareto.Row row) {
        return Words.of("quality.percent", figure(row.upTo(), 0));
    }

    public String minutes(Pareto.Row row) {
        return row.known() == 0
                ? Words.of("quality.paretoUnknown")
                : row.known() == row.count()
                        ? Words.of("page.minutes", row.lostMinutes())
                        : Words.of("quality.paretoKnown", row.lostMinutes(), row.known());
    }

    public List<Option> bys() {
        return Arrays.stream(By.values())
                .map(by -> new Option(by.word(), Words.of("quality.paretoBy." + by.name())))
                .toList();
    }

    private String query() {
        return "?from=" + form.value("from") + "&to=" + form.value("to") + "&kind=" + form.value("kind") + "&by="
                + pareto.by().word();
    }

    public String csv() {
        return "/quality/yield.csv" + query();
    }

    public String paretoCsv() {
        return "/quality/yield/pareto.csv" + query();
    }

    List<List<String>> stageCells() {
        return stages().stream()
                .map(stage -> List.of(
                        stage.stage(),
                        String.valueOf(stage.vehicles()),
                        String.valueOf(stage.firstPass()),
                        figure(stage.share().results().rate(), 4),
                        figure(stage.share().results().exactLow(), 4),
                        figure(stage.share().results().exactHigh(), 4)))
                .toList();
    }

    List<List<String>> paretoCells() {
        return pareto.rows().stream()
                .map(row -> List.of(
                        pareto.by().word(),
                        row.code(),
                        name(row),
                        String.valueOf(row.count()),
                        figure(row.upTo(), 1),
                        String.valueOf(row.lostMinutes()),
                        String.valueOf(row.known())))
                .toList();
    }
}
