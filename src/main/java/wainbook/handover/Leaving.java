package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.LineForecast;
import wainbook.page.Formats;
import wainbook.page.Words;

/** When vehicles will be ready to leave, by the forecast of the line: what their papers have to be in time for. */
@ApplicationScoped
public class Leaving {

    private static final double LIKELY = 0.5;

    /** Our choice: a paper should hold even when the vehicle is late as one in ten is. */
    private static final double LATE = 0.9;

    /**
     * The days at the works on which a vehicle will be through its line and its appointments.
     *
     * @param likely as likely before as after
     * @param late by then in nine of ten draws
     */
    public record Days(LocalDate likely, LocalDate late) {

        public String sentence() {
            return likely.equals(late)
                    ? Words.of("handover.leavesOn", Formats.date(likely))
                    : Words.of("handover.leavesBetween", Formats.date(likely), Formats.date(late));
        }

        public String day() {
            return Formats.date(likely);
        }
    }

    private final Forecasts forecasts;

    Leaving(Forecasts forecasts) {
        this.forecasts = forecasts;
    }

    /** By order; without those that have no date within the forecast’s reach, and those that are gone. */
    public Map<String, Days> all(Instant now) {
        LineForecast forecast = forecasts.at(now);
        Map<String, Days> days = new LinkedHashMap<>();
        for (LineForecast.Of one : forecast.vehicles()) {
            Finish finish = one.outlook().finish();
            day(forecast, finish, LIKELY)
                    .flatMap(likely -> day(forecast, finish, LATE).map(late -> new Days(likely, late)))
                    .ifPresent(known -> days.put(one.vehicle().order(), known));
        }
        return days;
    }

    private static Optional<LocalDate> day(LineForecast forecast, Finish finish, double level) {
        var calendar = forecast.line().calendar();
        return calendar.notAfter(finish.quantile(level)).map(calendar::day);
    }
}
