package wainbook.quality.chart.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;
import wainbook.engineering.statistics.Capability;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.page.chart.Chart;
import wainbook.page.chart.Chart.Level;
import wainbook.page.chart.Chart.Mark;
import wainbook.page.chart.Chart.Sort;
import wainbook.quality.QualitySaying.DriftSettled;
import wainbook.quality.chart.ItemChart;
import wainbook.quality.chart.Scale;
import wainbook.quality.chart.Sign;
import wainbook.quality.chart.Signal;
import wainbook.quality.chart.Standing;
import wainbook.quality.reading.Reading;

/**
 * One chart with its table, its signals and its capability.
 *
 * @param kind of vehicle that it is narrowed to; empty for all
 * @param standing what nobody has settled; none where it is narrowed
 * @param settled what was settled last
 */
public record ChartView(
        ItemChart chart,
        String title,
        String kind,
        List<Option> kinds,
        Optional<Standing> standing,
        Optional<Entry> settled,
        Filled filled,
        boolean maySettle) {

    /** What fits on one picture; all of it is judged. */
    private static final int DRAWN = 100;

    /** One reading in the table. */
    public record Row(int number, Reading reading, String scaled, String range, String signs) {}

    public boolean drawable() {
        return chart.limits().isPresent();
    }

    public String unit() {
        return chart.scale() == Scale.AS_READ ? chart.readings().get(0).unit() : "%";
    }

    public String scaleWords() {
        return Words.of("quality.scale." + chart.scale().name());
    }

    public boolean standardised() {
        return chart.scale() != Scale.AS_READ;
    }

    public String limitsWords() {
        return Words.of(chart.held() ? "quality.limitsHeld" : "quality.limitsProvisional", chart.limitsFrom());
    }

    private int from() {
        return Math.max(0, chart.n() - DRAWN);
    }

    public boolean shortened() {
        return from() > 0;
    }

    public int drawn() {
        return chart.n() - from();
    }

    public Chart values() {
        var limits = chart.limits().orElseThrow();
        var levels = new ArrayList<Level>();
        chart.lower().ifPresent(value -> levels.add(new Level(Sort.LIMIT, Words.of("quality.lowerLimit"), value)));
        chart.upper().ifPresent(value -> levels.add(new Level(Sort.LIMIT, Words.of("quality.upperLimit"), value)));
        levels.add(new Level(Sort.CONTROL, Words.of("quality.controlLower"), limits.lower()));
        levels.add(new Level(Sort.CENTRE, Words.of("quality.centre"), limits.centre()));
        levels.add(new Level(Sort.CONTROL, Words.of("quality.controlUpper"), limits.upper()));
        return new Chart(
                Words.of("quality.valuesTitle", title),
                Words.of("quality.valuesDescription", drawn(), chart.signals().size()),
                unit(),
                marks(chart.values(), false),
                levels,
                List.of());
    }

    public Chart ranges() {
        var limits = chart.limits().orElseThrow();
        var values = new ArrayList<Double>();
        values.add(0.0);
        values.addAll(chart.movingRanges());
        return new Chart(
                Words.of("quality.rangesTitle", title),
                Words.of("quality.rangesDescription"),
                unit(),
                marks(values, true),
                List.of(
                        new Level(Sort.CENTRE, Words.of("quality.rangeMean"), limits.movingRangeMean()),
                        new Level(Sort.CONTROL, Words.of("quality.rangeUpper"), limits.movingRangeUpper())),
                List.of());
    }

    private List<Mark> marks(List<Double> values, boolean ranges) {
        return IntStream.range(ranges ? Math.max(1, from()) : from(), chart.n())
                .mapToObj(i -> new Mark(i + 1.0, String.valueOf(i + 1), values.get(i), speaks(i, ranges)))
                .toList();
    }

    private boolean speaks(int point, boolean ranges) {
        return chart.signals().stream().anyMatch(one -> one.point() == point && (one.sign() == Sign.RANGE) == ranges);
    }

    /** All readings, newest first. */
    public List<Row> rows() {
        return IntStream.range(0, chart.n())
                .map(i -> chart.n() - 1 - i)
                .mapToObj(i -> new Row(
                        i + 1,
                        chart.readings().get(i),
                        number(chart.values().get(i)),
                        i == 0
                                ? ""
                                : number(Math.abs(
                                        chart.values().get(i) - chart.values().get(i - 1))),
                        signs(i)))
                .toList();
    }

    /** Readings that completed a signal, newest first. */
    public List<Row> signalled() {
        return rows().stream().filter(row -> !row.signs().isEmpty()).limit(12).toList();
    }

    private String signs(int point) {
        return chart.signals().stream()
                .filter(one -> one.point() == point)
                .map(Signal::sign)
                .map(Sign::words)
                .reduce((one, other) -> one + "; " + other)
                .orElse("");
    }

    static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString()
                .replace('-', '−');
    }

    public String capabilityWords() {
        return new CapabilityWords(chart).sentence();
    }

    /** The indices, each with its interval where one is known. */
    public List<Option> indices() {
        return chart.capability().map(working -> indices(working.results())).orElse(List.of());
    }

    private static List<Option> indices(Capability.Results found) {
        var indices = new ArrayList<Option>();
        found.pp().ifPresent(pp -> indices.add(index("Pp", found.pp(), found.ppLow(), found.ppHigh())));
        found.ppk().ifPresent(ppk -> indices.add(index("Ppk", found.ppk(), found.ppkLow(), found.ppkHigh())));
        found.cp().ifPresent(cp -> indices.add(index("Cp", found.cp(), Optional.empty(), Optional.empty())));
        found.cpk().ifPresent(cpk -> indices.add(index("Cpk", found.cpk(), Optional.empty(), Optional.empty())));
        return indices;
    }

    private static Option index(String name, Optional<Double> value, Optional<Double> low, Optional<Double> high) {
        String figure = CapabilityWords.two(value);
        return new Option(
                name,
                low.isPresent()
                        ? Words.of("quality.indexInterval", figure, CapabilityWords.two(low), CapabilityWords.two(high))
                        : Words.of("quality.indexWithin", figure));
    }

    public List<Step> steps() {
        return chart.capability().map(Working::steps).orElse(List.of());
    }

    public List<Source> sources() {
        return chart.capability().map(Working::sources).orElse(List.of());
    }

    public String known(Source source) {
        return Words.of("quality.known." + source.standing());
    }

    public String standingWords() {
        return standing.flatMap(Standing::forecast)
                .map(forecast -> Words.of("quality.forecastSays", forecast.vehicles()))
                .orElseGet(() -> standing.map(one -> one.sign().words()).orElse(""));
    }

    public DriftSettled settledSaying() {
        return (DriftSettled) settled.orElseThrow().saying();
    }

    public String csv() {
        return chart.of().path() + "/readings.csv" + (kind.isEmpty() ? "" : "?kind=" + kind);
    }
}
