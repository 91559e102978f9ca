package wainbook.line.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.line.Standing;
import wainbook.line.cause.Cause;
import wainbook.line.station.StationState;
import wainbook.page.SignedIn;
import wainbook.works.shift.Shifts;

/** The line for screens and scripts. */
@Path("/api/v1/line")
public class LineApi {

    /** The line at one moment, from its end to its start. */
    public record Answer(Instant at, Optional<Instant> shiftUntil, Optional<Integer> taktMinutes, List<At> stations) {}

    /**
     * One station.
     *
     * @param whenWorking its state if the shift began now; the same as {@code state} while one runs
     */
    public record At(
            String station,
            String stage,
            StationState state,
            StationState whenWorking,
            Optional<Here> vehicle,
            List<Cause> causes) {}

    /** The vehicle that stands there. */
    public record Here(String order, Instant since, long workingMinutes, double taktMinutes, int settled, int items) {}

    private final LineLook look;
    private final SignedIn signedIn;

    LineApi(LineLook look, SignedIn signedIn) {
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer line() {
        LineNow line = look.at(signedIn.now().at());
        return new Answer(
                line.head().at(),
                line.head().shift().map(Shifts.Span::to),
                line.head().takt(),
                line.rows().stream().map(LineApi::at).toList());
    }

    private static At at(LineNow.Row row) {
        return new At(
                row.station().code(),
                row.stage().code(),
                row.state(),
                row.whenWorking(),
                row.standing().map(LineApi::here),
                row.causes());
    }

    private static Here here(Standing standing) {
        return new Here(
                standing.order().number(),
                standing.since(),
                standing.minutes(),
                standing.allowedMin(),
                standing.settled(),
                standing.items());
    }
}
