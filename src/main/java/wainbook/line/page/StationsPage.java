package wainbook.line.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.List;
import wainbook.line.page.LineNow.Row;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;

/** Where people work: choose the station one stands at; its own address leads to whatever vehicle stands there. */
@Path("/stations")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class StationsPage {

    /** A tablet that waits at an empty station finds the next vehicle by itself. */
    private static final int LOOK_AGAIN_S = 15;

    private final LineLook look;
    private final SignedIn signedIn;

    StationsPage(LineLook look, SignedIn signedIn) {
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    public Response stations() {
        return Response.ok(LinePages.choice(inOrder())).build();
    }

    @GET
    @Path("{station}")
    public Response station(String station) {
        Row row = inOrder().stream()
                .filter(known -> known.station().code().equals(station))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        return row.standing()
                .map(standing -> Redirect.to("/station/" + standing.order().number()))
                .orElseGet(() -> Response.ok(LinePages.nobody(row))
                        .header("Refresh", LOOK_AGAIN_S)
                        .build());
    }

    private List<Row> inOrder() {
        return look.at(signedIn.now().at()).rows().stream()
                .sorted(Comparator.comparingInt((Row row) -> row.stage().number())
                        .thenComparing(row -> row.station().code()))
                .toList();
    }
}
