package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Optional;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.line.forecast.whatif.Asking;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.works.shift.WorksDay;

/** What another calendar, more hands or another order would do. The address holds the question. */
@Path("/forecast/what-if")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class WhatIfPage {

    private final Asking asking;
    private final WorksDay day;
    private final SignedIn signedIn;

    WhatIfPage(Asking asking, WorksDay day, SignedIn signedIn) {
        this.asking = asking;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public Response whatIf(@Context UriInfo address) {
        TheLineNow line = asking.line(signedIn.now().at());
        Formats formats = new Formats(day.zone());
        WhatIfForm.Read read = WhatIfForm.read(WhatIfForm.filled(address.getQueryParameters()), day.zone());
        if (!read.filled().right()) {
            return again(line, read.filled(), formats);
        }
        if (read.asked().asksNothing()) {
            return Response.ok(ForecastPages.whatif(new WhatIfView(line, Optional.empty(), read.filled(), formats)))
                    .build();
        }
        return asking.answer(line, read.asked())
                .fold(
                        found -> Response.ok(ForecastPages.whatif(
                                        new WhatIfView(line, Optional.of(found), read.filled(), formats)))
                                .build(),
                        against -> again(line, read.filled().refused(against), formats));
    }

    private static Response again(TheLineNow line, Filled filled, Formats formats) {
        return filled.again(faulty -> ForecastPages.whatif(new WhatIfView(line, Optional.empty(), faulty, formats)));
    }
}
