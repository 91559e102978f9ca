package wainbook.line.measure.page;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.line.measure.HelpTimes;
import wainbook.line.measure.Measures;
import wainbook.line.measure.Measures.Lost;
import wainbook.line.measure.StationTimes;
import wainbook.line.station.StationState;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.page.chart.Bars;
import wainbook.page.chart.Bars.Bar;
import wainbook.station.help.HelpCall;
import wainbook.station.help.OpenHelpCall;

/** Measures as their page shows them; stations from the end of the line to its start. */
public record MeasuresView(Measures found, Form form, List<Option> kinds, Formats formats, LocalDate today) {

    /** What the record has the time elements for; every other indicator is left out, not guessed. */
    static final List<Indicator> OF_A_STATION = List.of(
            Indicator.AVAILABILITY,
            Indicator.ALLOCATION_EFFICIENCY,
            Indicator.UTILIZATION_EFFICIENCY,
            Indicator.TECHNICAL_EFFICIENCY);

    static final List<Indicator> OF_THE_LINE = Stream.concat(
                    OF_A_STATION.stream(), Stream.of(Indicator.ALLOCATION_RATIO, Indicator.PRODUCTION_PROCESS_RATIO))
            .toList();

    private static final int DRAWN = 10;

    /** A link to another period. */
    public record Quick(String text, String path, boolean shown) {}

    /** A cell of the table of states. */
    public record Cell(String minutes, String share) {}

    public String title() {
        String days = days();
        int made = found.throughput().finished().size();
        return found.planned().isPresent()
                ? Words.of(
                        "line.measuresTitleOf",
                        made,
                        Figures.figure(found.planned().getAsDouble(), 1),
                        days)
                : Words.of("line.measuresTitle", made, days);
    }

    private String days() {
        String from = Formats.date(found.period().from());
        return found.period().from().equals(found.period().to())
                ? from
                : Words.of(
                        "line.measuresDays", from, Formats.date(found.period().to()));
    }

    public String asOf() {
        return Words.of("line.measuresAsOf", formats.moment(found.period().end()));
    }

    public boolean line() {
        return !found.stations().isEmpty();
    }

    public boolean any() {
        return found.any();
    }

    /** Minutes and hours of working time or of the clock. */
    static String minutes(double minutes) {
        return Formats.duration(Duration.ofMinutes(Math.round(minutes)));
    }

    public List<Quick> quick() {
        LocalDate monday = today.with(DayOfWeek.MONDAY);
        return List.of(
                quick("line.measuresToday", today),
                quick("line.measuresWeek", monday),
                quick("line.measuresFourWeeks", today.minusWeeks(4).plusDays(1)));
    }

    private Quick quick(String key, LocalDate from) {
        boolean shown =
                found.period().from().equals(from) && found.period().to().equals(today);
        return new Quick(Words.of(key), path("/line/measures", from, today), shown);
    }

    private String path(String page, LocalDate from, LocalDate to) {
        return page + "?from=" + from + "&to=" + to + (found.kind().isEmpty() ? "" : "&kind=" + found.kind());
    }

    private String here(String page) {
        return path(page, found.period().from(), found.period().to());
    }

    public String csv() {
        return here("/line/measures.csv");
    }

    public String stationsCsv() {
        return here("/line/measures/stations.csv");
    }

    public String lostCsv() {
        return here("/line/measures/lost.csv");
    }

    public String callsCsv() {
        return here("/line/measures/calls.csv");
    }

    public String yieldPath() {
        return here("/quality/yield");
    }

    public List<Figures.Figure> figures() {
        return Figures.of(found);
    }

    public List<StationTimes> stations() {
        var reversed = new ArrayList<>(found.stations());
        Collections.reverse(reversed);
        return reversed;
    }

    public String name(StationTimes one) {
        return one.stage().number() + " · " + one.station().title();
    }

    public List<StationState> states() {
        return Stream.concat(StateBars.ORDER.stream(), Stream.of(Doing.OFF_SHIFT))
                .map(StationState::of)
                .toList();
    }

    public List<Cell> cells(StationTimes one) {
        return states().stream()
                .map(state -> Doing.valueOf(state.name()))
                .map(doing -> new Cell(
                        minutes(one.minutes(doing)), doing == Doing.OFF_SHIFT ? "" : Figures.percent(one.share(doing))))
                .toList();
    }

    public String worked(StationTimes one) {
        return minutes(one.workingMinutes());
    }

    public List<Indicator> indicators() {
        return OF_A_STATION;
    }

    public String indicator(StationTimes one, Indicator indicator) {
        OptionalDouble value = one.indicator(indicator);
        return value.isPresent() ? Figures.percent(value.getAsDouble()) : "–";
    }

    public StateBars bars() {
        StationTimes waits = found.stations().stream()
                .max(Comparator.comparingDouble(MeasuresView::waiting))
                .orElseThrow();
        return new StateBars(
                Words.of("line.measuresStates"),
                Words.of("line.measuresStatesText", waits.station().title(), Figures.percent(waiting(waits))),
                stations().stream()
                        .filter(one -> one.workingMinutes() > 0)
                        .map(one -> new StateBars.Row(
                                name(one),
                                StateBars.ORDER.stream()
                                        .map(doing -> new StateBars.Part(
                                                doing,
                                                StationState.of(doing).word(),
                                                one.share(doing),
                                                Figures.percent(one.share(doing))))
                                        .toList()))
                        .toList());
    }

    private static double waiting(StationTimes one) {
        return one.share(Doing.BLOCKED) + one.share(Doing.STARVED);
    }

    public boolean anyWorked() {
        return found.stations().stream().anyMatch(one -> one.workingMinutes() > 0);
    }

    public String cause(Lost lost) {
        return lost.station()
                .map(station -> Words.of(
                        lost.doing() == Doing.BLOCKED ? "line.measuresLostMoving" : "line.measuresLostBy",
                        station.title(),
                        StationState.of(lost.doing()).word()))
                .orElseGet(() -> Words.of("line.measuresLostRelease"));
    }

    public String lostTime(Lost lost) {
        return minutes(lost.minutes());
    }

    public String upTo(Lost lost) {
        return Figures.percent(lost.upTo());
    }

    public Bars lostBars() {
        Lost first = found.lost().get(0);
        return new Bars(
                Words.of("line.measuresLost"),
                Words.of("line.measuresLostText", cause(first), lostTime(first)),
                "min",
                first.minutes(),
                found.lost().stream()
                        .limit(DRAWN)
                        .map(lost -> new Bar(cause(lost), lost.minutes(), lostTime(lost)))
                        .toList());
    }

    public BottleneckView bottleneck() {
        return new BottleneckView(found, formats);
    }

    public String help(HelpTimes calls) {
        return HelpCall.word(calls.help());
    }

    public String time(OptionalDouble minutes) {
        return minutes.isPresent() ? minutes(minutes.getAsDouble()) : "–";
    }

    /** Of all calls that are open now, the oldest. */
    public Optional<OpenHelpCall> longestOpen() {
        return OpenHelpCall.oldestFirst().stream().findFirst();
    }
}
