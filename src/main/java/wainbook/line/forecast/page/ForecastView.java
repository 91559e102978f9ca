package wainbook.line.forecast.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.LineForecast.Of;
import wainbook.line.forecast.OddsInWords;
import wainbook.line.forecast.StageLook;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.After;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.EntryRule;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.SetOrder;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.PersonInWords;

/**
 * The forecast as its page shows it.
 *
 * @param inLineOrder otherwise the lowest odds come first
 * @param back orders of vehicles that came back, by the order under which each was handed over before
 */
public record ForecastView(
        LineForecast found, Formats formats, boolean inLineOrder, Widened widened, Map<String, String> back) {

    private static final double MIDDLE = 0.8;
    private static final double LATEST = 0.95;
    private static final char NO_BREAK = '\u00a0';

    /** One vehicle, in words. */
    public record Row(
            OnHand vehicle,
            String where,
            String median,
            Optional<String> offTheLine,
            String range,
            String latest,
            String widened,
            String promised,
            String odds,
            boolean missesProbably,
            String drivers,
            String basis) {}

    public ForecastView {
        back = Map.copyOf(back);
    }

    public boolean cameBack(Row row) {
        return back.containsKey(row.vehicle().order());
    }

    public List<Row> rows() {
        return ordered().stream().map(this::row).toList();
    }

    private List<Of> ordered() {
        return inLineOrder ? found.vehicles() : found.lowestOddsFirst();
    }

    private Row row(Of one) {
        OnHand vehicle = one.vehicle();
        Finish finish = one.outlook().finish();
        Calendar calendar = calendar();
        Widened.By wide = widened.of(calendar, finish);
        return new Row(
                vehicle,
                where(vehicle),
                time(calendar.notAfter(finish.median())),
                after() && vehicle.doing() != OnHand.Doing.AFTER
                        ? Optional.of(time(
                                calendar.notAfter(one.outlook().offTheLine().median())))
                        : Optional.empty(),
                range(
                        calendar.notBefore(wide.earlier(finish.interval(MIDDLE).lowMinute(), calendar)),
                        calendar.notAfter(wide.later(finish.interval(MIDDLE).highMinute(), calendar))),
                time(calendar.notAfter(wide.latest(finish.quantile(LATEST), calendar))),
                wide.words(),
                Formats.date(vehicle.promisedOn()),
                OddsInWords.of(one.odds()),
                one.missesProbably(),
                DriversInWords.of(
                        one.outlook(), DriversInWords.part(one, found.line().posts())),
                DriversInWords.basis(found.line().basis(vehicle)));
    }

    private Calendar calendar() {
        return found.line().calendar();
    }

    private String where(OnHand vehicle) {
        String doing = Words.of(
                "line.forecastDoing." + vehicle.doing().name(), vehicle.place().orElse(""));
        return vehicle.held() ? Words.of("line.forecastHeld", doing) : doing;
    }

    private String time(Optional<Instant> at) {
        return at.map(known -> day(known) + " " + formats.clock(known))
                .orElseGet(() -> Words.of("line.forecastBeyond", day(calendar().end())));
    }

    /** Not broken over lines. */
    private String day(Instant at) {
        return formats.day(at).replace(' ', NO_BREAK);
    }

    private String range(Optional<Instant> from, Optional<Instant> to) {
        boolean sameDay =
                from.isPresent() && to.isPresent() && formats.day(from.get()).equals(formats.day(to.get()));
        return Words.of("line.forecastRange", time(from), sameDay ? formats.clock(to.get()) : time(to));
    }

    /** Whether anything is dated after the line. */
    public boolean after() {
        return !found.line().after().kinds().isEmpty();
    }

    public String intro() {
        return Words.of(after() ? "line.forecastIntroAfter" : "line.forecastIntro");
    }

    public String appointments() {
        return Words.of("line.forecastAppointments", After.EXPECTED_COUNTS);
    }

    public boolean any() {
        return !found.line().vehicles().isEmpty();
    }

    public String title() {
        List<Of> all = found.vehicles();
        long late = all.stream().filter(Of::missesProbably).count();
        return all.isEmpty() ? Words.of("line.forecastTitleNone") : Words.of("line.forecastTitle", late, all.size());
    }

    public String asOf() {
        Instant now = calendar().now();
        return Words.of("line.forecastAsOf", formats.day(now), formats.clock(now));
    }

    /** A calendar without shifts is round the clock, which hardly any works keeps. */
    public boolean keepsShifts() {
        return !calendar().shifts().shifts().isEmpty();
    }

    public String restsOn() {
        int vehicles = found.line().past().vehicles();
        return Words.of("line.forecastRestsOn", vehicles);
    }

    public String precision() {
        return Words.of(
                found.forecast().precise() ? "line.forecastPrecise" : "line.forecastRough",
                found.forecast().replications(),
                Math.round(found.forecast().effort().toleranceMinutes()));
    }

    public String seed() {
        return String.valueOf(found.forecast().effort().seed());
    }

    public boolean assumesStops() {
        PastTimes past = found.line().past();
        boolean held = found.line().vehicles().stream().anyMatch(OnHand::held);
        boolean bay = found.line().vehicles().stream().anyMatch(one -> one.doing() == OnHand.Doing.BAY);
        return (held && !past.known(Stop.HOLD)) || (bay && !past.known(Stop.BAY));
    }

    /** A wait for a signature that is not known is not counted with. */
    public boolean assumesNoSignatures() {
        return !found.line().past().signaturesKnown();
    }

    public boolean awaits() {
        return found.line().vehicles().stream()
                .anyMatch(one -> !one.needs().parts().isEmpty());
    }

    public boolean cures() {
        return found.line().vehicles().stream()
                .anyMatch(one -> !one.needs().cures().isEmpty());
    }

    public boolean paced() {
        return !found.line().moves().none();
    }

    public String pace() {
        return Words.of(
                "line.forecastPaced",
                found.line().moves().minutes().stream()
                        .map(minute -> String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60))
                        .collect(Collectors.joining(", ")));
    }

    public String entry() {
        EntryRule rule = found.line().entry();
        if (rule.set().isPresent()) {
            SetOrder set = rule.set().get();
            return Words.of(
                    "line.forecastAsSet", PersonInWords.name(set.by()), formats.day(set.at()), formats.clock(set.at()));
        }
        return Words.of(
                rule.asOrdered() ? "line.forecastAsOrdered" : "line.forecastAsPromised", rule.foretold(), rule.pairs());
    }

    public List<StageLook> stages() {
        return found.line().posts().stream()
                .map(post -> StageLook.of(post, found.line().past()))
                .toList();
    }

    public String minutes(Optional<Double> minutes) {
        return minutes.map(known -> String.valueOf(Math.round(known))).orElse("–");
    }

    public String csv() {
        return inLineOrder ? "/forecast.csv?by=line" : "/forecast.csv";
    }

    /** Times by ISO 8601 and odds as a share, for a spreadsheet to count with. */
    List<List<String>> cells() {
        return ordered().stream().map(this::cells).toList();
    }

    private List<String> cells(Of one) {
        Row row = row(one);
        Finish finish = one.outlook().finish();
        Widened.By wide = widened.of(calendar(), finish);
        return List.of(
                row.vehicle().order(),
                row.vehicle().kind(),
                row.where(),
                iso(calendar().notAfter(finish.median())),
                iso(calendar().notBefore(wide.earlier(finish.interval(MIDDLE).lowMinute(), calendar()))),
                iso(calendar().notAfter(wide.later(finish.interval(MIDDLE).highMinute(), calendar()))),
                iso(calendar().notAfter(wide.latest(finish.quantile(LATEST), calendar()))),
                row.vehicle().promisedOn().toString(),
                String.format(Locale.ROOT, "%.4f", one.odds()),
                row.drivers().replace(NO_BREAK, ' '),
                row.basis(),
                back.getOrDefault(row.vehicle().order(), ""));
    }

    private static String iso(Optional<Instant> at) {
        return at.map(Instant::toString).orElse("");
    }
}
