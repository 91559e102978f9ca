package wainbook.book.set.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.book.Volume;
import wainbook.book.set.Freezing;
import wainbook.book.set.Making;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Books and frozen sets for scripts, which wait until they are made. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
public class BookApi {

    /** A set that was frozen; {@code upTo} and {@code head} are the end of the record that it was made from. */
    public record Frozen(
            int volume, Instant at, String who, EvidenceFile set, EvidenceFile merged, long upTo, String head) {

        static Frozen of(Volume volume) {
            var said = volume.said();
            return new Frozen(
                    said.volume(), volume.at(), volume.who(), said.set(), said.merged(), said.upTo(), said.head());
        }
    }

    /** A set to be frozen. */
    public record Freeze(UUID id, Optional<Long> seen) {}

    private final Ledger ledger;
    private final Making making;
    private final Freezing freezing;
    private final BookFiles files;
    private final SignedIn signedIn;

    BookApi(Ledger ledger, Making making, Freezing freezing, BookFiles files, SignedIn signedIn) {
        this.ledger = ledger;
        this.making = making;
        this.freezing = freezing;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    @Path("book.pdf")
    @Produces("application/pdf")
    @Authenticated
    public Response book(String order) {
        return BookFiles.book(order, making.waitForBook(history(order)));
    }

    @GET
    @Path("volumes")
    @Authenticated
    public List<Frozen> volumes(String order) {
        return Volume.of(history(order)).stream().map(Frozen::of).toList();
    }

    @POST
    @Path("volumes")
    @RolesAllowed(Role.handoverClerk)
    public Response freeze(String order, Freeze body) {
        history(order);
        return Receipt.of(freezing.freeze(new Freezing.ToFreeze(body.id, order, body.seen), signedIn.actor()));
    }

    @GET
    @Path("volumes/{volume}/set.zip")
    @Produces("application/zip")
    @Authenticated
    public Response set(String order, int volume) {
        return files.set(history(order), volume);
    }

    private History history(String order) {
        History history = ledger.history(Numbers.subject(order));
        return WorkOrder.of(history).map(known -> history).orElseThrow(NotFoundException::new);
    }
}
