package wainbook.line.forecast.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.flow.forecast.Finish;
import wainbook.line.forecast.Calendar;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.LineForecast.Of;
import wainbook.line.forecast.OddsInWords;
import wainbook.line.forecast.OnHand;
import wainbook.line.forecast.PastTimes;
import wainbook.line.forecast.StageLook;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * The forecast as its page shows it.
 *
 * @param inLineOrder otherwise the lowest odds come first
 */
public record ForecastView(LineForecast found, Formats formats, boolean inLineOrder) {

    private static final double MIDDLE = 0.8;
    private static final double LATEST = 0.95;
    private static final char NO_BREAK = '\u00a0';

    /** One vehicle, in words. */
    public record Row(
            OnHand vehicle,
            String where,
            String median,
            String range,
            String latest,
            String promised,
            String odds,
            boolean missesProbably,
            String drivers,
            String basis) {}

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
        return new Row(
                vehicle,
                where(vehicle),
                time(calendar.notAfter(finish.median())),
                range(
                        calendar.notBefore(finish.interval(MIDDLE).lowMinute()),
                        calendar.notAfter(finish.interval(MIDDLE).highMinute())),
                time(calendar.notAfter(finish.quantile(LATEST))),
                Formats.date(vehicle.promisedOn()),
                OddsInWords.of(one.odds()),
                one.missesProbably(),
                DriversInWords.of(one.outlook()),
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
        return (held && !past.holdsKnown()) || (bay && !past.baysKnown());
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
        return List.of(
                row.vehicle().order(),
                row.vehicle().kind(),
                row.where(),
                iso(calendar().notAfter(finish.median())),
                iso(calendar().notBefore(finish.interval(MIDDLE).lowMinute())),
                iso(calendar().notAfter(finish.interval(MIDDLE).highMinute())),
                iso(calendar().notAfter(finish.quantile(LATEST))),
                row.vehicle().promisedOn().toString(),
                String.format(Locale.ROOT, "%.4f", one.odds()),
                row.drivers().replace(NO_BREAK, ' '),
                row.basis());
    }

    private static String iso(Optional<Instant> at) {
        return at.map(Instant::toString).orElse("");
    }
}
