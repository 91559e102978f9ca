package wainbook.book.set.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.book.EarlierVolumes;
import wainbook.book.set.Freezing.ToFreeze;
import wainbook.book.set.Making;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;
import wainbook.works.Role;

/** The book of one vehicle: asked for, ready, and frozen with its documents. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/book")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class BookPage {

    /** A page behind which something is made is drawn again by itself. */
    private static final int LOOK_AGAIN_S = 2;

    private final Ledger ledger;
    private final Making making;
    private final BookFiles files;
    private final SignedIn signedIn;

    BookPage(Ledger ledger, Making making, BookFiles files, SignedIn signedIn) {
        this.ledger = ledger;
        this.making = making;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    public Response book(String order) {
        BookView view = view(history(order));
        Response.ResponseBuilder page = Response.ok(BookSetPages.book(Filled.fresh(), view));
        return view.making() || view.freezing()
                ? page.header("Refresh", LOOK_AGAIN_S).build()
                : page.build();
    }

    @POST
    public Response make(String order) {
        History history = history(order);
        making.askForBook(history);
        return Redirect.to("/orders/" + order + "/book");
    }

    @GET
    @Path("book.pdf")
    @Produces("application/pdf")
    public Response pdf(String order) {
        return making.printed(history(order))
                .map(ready -> BookFiles.book(order, ready))
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("volumes")
    @RolesAllowed(Role.handoverClerk)
    public Response freeze(String order, @RestForm String id, @RestForm Optional<Long> seen) {
        History history = history(order);
        Filled filled = Filled.sent(id);
        making.askToFreeze(history, new ToFreeze(filled.id(), order, seen), signedIn.actor());
        return Redirect.to("/orders/" + order + "/book");
    }

    @GET
    @Path("volumes/{volume}/set.zip")
    @Produces("application/zip")
    public Response zip(String order, int volume) {
        return files.set(history(order), volume);
    }

    @GET
    @Path("volumes/{volume}/set.pdf")
    @Produces("application/pdf")
    public Response merged(String order, int volume) {
        return files.merged(history(order), volume);
    }

    private BookView view(History history) {
        List<Reason> refusals = making.frozen(history).map(Outcome::reasons).orElse(List.of());
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return new BookView(
                history,
                order,
                making.bookOf(history),
                making.printed(history),
                making.setOf(history),
                refusals,
                EarlierVolumes.of(order, ledger),
                signedIn.is(Role.handoverClerk));
    }

    private History history(String order) {
        History history = ledger.history(Numbers.subject(order));
        return WorkOrder.of(history).map(known -> history).orElseThrow(NotFoundException::new);
    }
}
