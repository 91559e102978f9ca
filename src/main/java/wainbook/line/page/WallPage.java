package wainbook.line.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** The screen above the line. */
@Path("/wall")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class WallPage {

    private final LineLook look;
    private final WorksDay day;
    private final SignedIn signedIn;

    WallPage(LineLook look, WorksDay day, SignedIn signedIn) {
        this.look = look;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance wall() {
        return LinePages.wall(at(signedIn.now().at()));
    }

    @GET
    @Path("posts")
    public TemplateInstance posts() {
        return LinePages.posts(at(signedIn.now().at()));
    }

    private Wall at(Instant now) {
        LineNow line = look.at(now);
        Shifts shifts = day.shifts()
                .at(line.rows().stream().map(row -> row.station().code()).toList());
        long worked = shifts.workingMinutes(day.beginOfDay(now), now);
        Optional<Integer> takt = day.taktMinutes();
        return new Wall(
                line,
                new Formats(day.zone()),
                takt.filter(minutes -> shifts.working(now)).map(minutes -> minutes - worked % minutes),
                takt.map(minutes -> worked / minutes));
    }
}
