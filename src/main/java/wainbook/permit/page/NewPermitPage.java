package wainbook.permit.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.Permitting;
import wainbook.permit.Where;
import wainbook.permit.Work;
import wainbook.works.shift.WorksDay;

/** Issues a permit: asks first for the kind of work and where, then for what that kind wants. */
@Path("/permits/new")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class NewPermitPage {

    private final Permitting permitting;
    private final Ledger ledger;
    private final WorksDay day;
    private final SignedIn signedIn;

    NewPermitPage(Permitting permitting, Ledger ledger, WorksDay day, SignedIn signedIn) {
        this.permitting = permitting;
        this.ledger = ledger;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(
            @RestQuery Optional<String> sort, @RestQuery Optional<String> order, @RestQuery Optional<String> place) {
        Filled filled = Filled.fresh()
                .with("sort", sort.orElse(""))
                .with("order", order.orElse(""))
                .with("place", place.orElse(""))
                .with("validUntil", shiftEnd());
        List<Reason> bars = permitting.againstIssuing(ledger.history(Subject.works()), signedIn.now());
        boolean nowhere =
                filled.value("order").isEmpty() && filled.value("place").isEmpty();
        if (SentPermit.sort(filled).isPresent() && nowhere) {
            filled = filled.wrong("place", "permit.placeMissing");
        }
        return draw(filled.against(bars));
    }

    private String shiftEnd() {
        return day.shiftEnd(signedIn.now().at())
                .map(new Formats(day.zone())::clock)
                .orElse("");
    }

    private TemplateInstance draw(Filled filled) {
        boolean placed =
                !filled.value("order").isEmpty() || !filled.value("place").isEmpty();
        Optional<Work> sort = SentPermit.sort(filled).filter(one -> placed);
        return PermitPages.issue(new NewView(filled, sort));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response issue(MultivaluedMap<String, String> sent) {
        ZonedDateTime now = signedIn.now().at().atZone(day.zone());
        Filled filled = SentPermit.filled(sent);
        SentPermit.Read read = SentPermit.read(filled, now);
        if (read.asked().isEmpty()) {
            return read.filled().again(this::draw);
        }
        return permitting
                .issue(read.asked().get(), signedIn.actor())
                .fold(
                        entry -> filled.answer(
                                Outcome.done(entry),
                                "/permits/" + Where.word(entry.subject()) + "/"
                                        + ((PermitIssued) entry.saying()).permit(),
                                this::draw),
                        reasons -> filled.refused(reasons).again(this::draw));
    }
}
