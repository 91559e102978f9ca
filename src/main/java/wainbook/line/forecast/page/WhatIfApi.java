package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.line.forecast.whatif.Answer;
import wainbook.line.forecast.whatif.Asking;
import wainbook.line.forecast.whatif.WhatIf;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;

/** What would be, for scripts. It writes nothing. */
@Path("/api/v1/forecast/what-if")
public class WhatIfApi {

    /**
     * Before and after with the same draws; differences with their 95 % interval.
     *
     * @param savedLateMinutes summed lateness that vanishes, in working minutes of the last stage
     */
    public record Found(
            Instant at,
            long seed,
            int replications,
            double lateMinutesBefore,
            double lateMinutesAfter,
            PairedDifference savedLateMinutes,
            LocalDate by,
            double finishedBefore,
            double finishedAfter,
            PairedDifference moreFinished,
            List<Row> vehicles) {}

    /** One vehicle; {@code laterMinutes} are working minutes of the last stage, negative if it finishes earlier. */
    public record Row(String order, At before, At after, Optional<PairedDifference> laterMinutes) {}

    /** When it finishes, and the odds of its promised day. */
    public record At(Optional<Instant> median, Optional<Instant> from80, Optional<Instant> to80, double odds) {}

    private final Asking asking;
    private final SignedIn signedIn;

    WhatIfApi(Asking asking, SignedIn signedIn) {
        this.asking = asking;
        this.signedIn = signedIn;
    }

    @POST
    @Authenticated
    public Response whatIf(WhatIf asked) {
        TheLineNow line = asking.line(signedIn.now().at());
        return asking.answer(line, asked)
                .fold(
                        found -> Response.ok(found(line.calendar(), found)).build(),
                        against -> Problem.of(against).response());
    }

    private static Found found(Calendar calendar, Answer found) {
        return new Found(
                calendar.now(),
                LineForecast.SEED,
                found.replications(),
                found.lateBefore(),
                found.lateAfter(),
                found.gain().lateMinutes(),
                found.by(),
                found.finishedBefore(),
                found.finishedAfter(),
                found.more(),
                found.vehicles().stream()
                        .map(row -> new Row(
                                row.vehicle().order(),
                                at(calendar, row.before(), row.oddsBefore()),
                                at(calendar, row.after(), row.oddsAfter()),
                                row.later()))
                        .toList());
    }

    private static At at(Calendar calendar, Finish finish, double odds) {
        return new At(
                calendar.notAfter(finish.median()),
                calendar.notBefore(finish.interval(0.8).lowMinute()),
                calendar.notAfter(finish.interval(0.8).highMinute()),
                odds);
    }
}
