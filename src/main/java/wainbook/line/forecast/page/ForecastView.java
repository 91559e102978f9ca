package wainbook.line.forecast.page;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.forecast.Finish;
import wainbook.line.forecast.Calendar;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.LineForecast.Of;
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
        return (inLineOrder ? found.vehicles() : found.lowestOddsFirst())
                .stream().map(this::row).toList();
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
        return at.map(known -> formats.day(known) + " " + formats.clock(known))
                .orElseGet(() ->
                        Words.of("line.forecastBeyond", formats.day(calendar().end())));
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

    List<List<String>> cells() {
        return rows().stream()
                .map(row -> List.of(
                        row.vehicle().order(),
                        row.vehicle().kind(),
                        row.where(),
                        row.median(),
                        row.range(),
                        row.latest(),
                        row.vehicle().promisedOn().toString(),
                        row.odds(),
                        row.drivers(),
                        row.basis()))
                .toList();
    }
}
