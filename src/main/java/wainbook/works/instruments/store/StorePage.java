package wainbook.works.instruments.store;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** The tool store: what is out and with whom, and the forms to give out and take back. */
@Path("/tool-store")
@Produces(MediaType.TEXT_HTML)
public class StorePage {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private final Store store;
    private final SignedIn signedIn;

    StorePage(Store store, SignedIn signedIn) {
        this.store = store;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance store() {
        return draw(Filled.fresh());
    }

    @GET
    @Path("out.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv() {
        List<List<String>> rows = StoreView.out().stream()
                .map(row -> List.of(
                        row.code, row.title, row.holder, row.place == null ? "" : row.place, row.outSince.toString()))
                .toList();
        return Csv.file("tools-out", Arrays.asList(Words.of("works.storeHeader").split(";")), rows);
    }

    @POST
    @Path("issues")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
    public Response issue(@RestForm String id, @RestForm String code, @RestForm String to, @RestForm String place) {
        Filled filled = Filled.sent(id).with("code", code).with("to", to).with("place", place);
        Filled checked = coded(coded(filled, "code"), "to");
        if (!checked.right()) {
            return checked.again(this::draw);
        }
        var asked = new Store.ToIssue(
                filled.id(),
                filled.value("code"),
                filled.value("to"),
                Optional.of(filled.value("place")).filter(text -> !text.isEmpty()));
        return answer(filled, store.issue(asked, signedIn.actor()));
    }

    @POST
    @Path("returns")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
    public Response takeBack(
            @RestForm String id, @RestForm String back, @RestForm String unsound, @RestForm String remark) {
        Filled filled =
                Filled.sent(id).with("back", back).with("unsound", unsound).with("remark", remark);
        boolean sound = filled.value("unsound").isEmpty();
        Filled checked = coded(filled, "back");
        checked = !sound && filled.value("remark").isEmpty() ? checked.wrong("remark", "works.remarkMissing") : checked;
        if (!checked.right()) {
            return checked.again(this::draw);
        }
        var asked = new Store.ToReturn(
                filled.id(),
                filled.value("back"),
                sound,
                Optional.of(filled.value("remark")).filter(text -> !text.isEmpty()));
        return answer(filled, store.takeBack(asked, signedIn.actor()));
    }

    private static Filled coded(Filled filled, String field) {
        return filled.value(field).matches(CODE) ? filled : filled.wrong(field, "works.codeFault");
    }

    private Response answer(Filled filled, Outcome<Entry> outcome) {
        return filled.answer(outcome, "/tool-store", this::draw);
    }

    private TemplateInstance draw(Filled filled) {
        boolean may = List.of(Role.TECHNICIAN, Role.TEAM_LEADER, Role.WORKS_ENGINEER, Role.QUALITY_ENGINEER).stream()
                .anyMatch(role -> signedIn.is(role.word()));
        return StorePages.store(
                new StoreView(StoreView.out(), filled, signedIn.now().at(), may));
    }
}
