package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.flow.forecast.outcome.Cause;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.forecast.outcome.StageTimes;
import wainbook.engineering.flow.history.Basis;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.OnHand;
import wainbook.order.WorkOrderRow;
import wainbook.page.SignedIn;

/** The forecast for scripts. Times are rounded outwards to quarters of an hour and absent beyond {@code calendarEnds}. */
@Path("/api/v1/forecast")
public class ForecastApi {

    /**
     * In the order of the line.
     *
     * @param precise the 80 % point of every vehicle is known within ten working minutes, as far as chance in drawing goes
     * @param pastVehicles whose recorded times are drawn from
     */
    public record Answer(
            Instant at,
            Instant calendarEnds,
            long seed,
            int replications,
            boolean precise,
            int pastVehicles,
            List<Row> vehicles) {}

    /**
     * One vehicle; its finish is the signature of its last gate.
     *
     * @param odds of being finished by the end of the day it is promised for, never 0 or 1
     * @param into mean share of its time that goes into each cause
     * @param awaited parts that are missing for it
     * @param earlier the order under which the vehicle was handed over before, where it came back
     */
    public record Row(
            String order,
            String kind,
            OnHand.Doing doing,
            Optional<String> stage,
            Optional<String> place,
            Optional<Instant> median,
            Optional<Instant> from80,
            Optional<Instant> to80,
            Optional<Instant> by95,
            LocalDate promisedOn,
            double odds,
            Map<Cause, Double> into,
            List<AwaitedPart> awaited,
            List<AtStage> stages,
            List<Basis> basis,
            Optional<String> earlier) {}

    /** When it leaves a stage: 10 %, 50 % and 90 % of the draws. */
    public record AtStage(
            String stage, Optional<Instant> tenth, Optional<Instant> median, Optional<Instant> ninetieth) {}

    private final Forecasts forecasts;
    private final SignedIn signedIn;

    ForecastApi(Forecasts forecasts, SignedIn signedIn) {
        this.forecasts = forecasts;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer forecast() {
        LineForecast found = forecasts.at(signedIn.now().at());
        Map<String, String> back = WorkOrderRow.back();
        Calendar calendar = found.line().calendar();
        return new Answer(
                calendar.now(),
                calendar.end(),
                found.forecast().effort().seed(),
                found.forecast().replications(),
                found.forecast().precise(),
                found.line().past().vehicles(),
                found.vehicles().stream().map(one -> row(found, one, back)).toList());
    }

    private static Row row(LineForecast found, LineForecast.Of one, Map<String, String> back) {
        Calendar calendar = found.line().calendar();
        OnHand vehicle = one.vehicle();
        Finish finish = one.outlook().finish();
        return new Row(
                vehicle.order(),
                vehicle.kind(),
                vehicle.doing(),
                vehicle.stage(),
                vehicle.place(),
                calendar.notAfter(finish.median()),
                calendar.notBefore(finish.interval(0.8).lowMinute()),
                calendar.notAfter(finish.interval(0.8).highMinute()),
                calendar.notAfter(finish.quantile(0.95)),
                vehicle.promisedOn(),
                one.odds(),
                shares(one.outlook()),
                vehicle.needs().parts(),
                one.outlook().stages().stream()
                        .map(stage -> stage(found, stage))
                        .toList(),
                found.line().basis(vehicle),
                Optional.ofNullable(back.get(vehicle.order())));
    }

    private static AtStage stage(LineForecast found, StageTimes times) {
        Calendar calendar = found.line().calendar();
        return new AtStage(
                found.line().posts().get(times.stage()).stage(),
                calendar.notBefore(times.outOf().tenth()),
                calendar.notAfter(times.outOf().median()),
                calendar.notAfter(times.outOf().ninetieth()));
    }

    private static Map<Cause, Double> shares(Outlook outlook) {
        Map<Cause, Double> shares = new EnumMap<>(Cause.class);
        outlook.drivers().keySet().forEach(cause -> shares.put(cause, outlook.share(cause)));
        return shares;
    }
}
