package wainbook.handover.road.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import wainbook.handover.road.RoadDrive;
import wainbook.handover.road.RoadLook;
import wainbook.handover.road.RoadRelease;
import wainbook.handover.road.RoadRules;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;
import wainbook.works.Role;

/** A vehicle's release for the road, and the log of its drives. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/road")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class RoadPage {

    private final Ledger ledger;
    private final RoadLook look;
    private final RoadRelease releasing;
    private final RoadDrive driving;
    private final SignedIn signedIn;

    RoadPage(Ledger ledger, RoadLook look, RoadRelease releasing, RoadDrive driving, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.releasing = releasing;
        this.driving = driving;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance road(String order) {
        return draw(order, Filled.fresh());
    }

    @GET
    @Path("drives.csv")
    @Produces("text/csv")
    public Response drives(String order) {
        return DrivesTable.file(view(order, Filled.fresh()));
    }

    @POST
    @Path("release")
    @RolesAllowed(Role.inspector)
    public Response release(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new RoadRelease.ToRelease(
                form.filled().id(),
                order,
                form.text("fingerprint"),
                form.text("driver"),
                form.text("plates"),
                form.text("insurance"),
                form.text("password"));
        return form.filled()
                .answer(releasing.release(asked, signedIn.actor()), path(order), again -> draw(order, again));
    }

    @POST
    @Path("end")
    public Response end(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new RoadRelease.ToEnd(form.filled().id(), order, form.text("reason"));
        return form.filled().answer(releasing.end(asked, signedIn.actor()), path(order), again -> draw(order, again));
    }

    @POST
    @Path("drives")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.handoverClerk, Role.lineManager})
    public Response log(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new RoadDrive.ToLog(
                form.filled().id(),
                order,
                form.text("route"),
                form.whole("loadKg"),
                form.whole("fromKm"),
                form.whole("toKm"),
                form.maybeNumber("packsDegC"),
                form.maybeNumber("driveDegC"),
                form.maybeNumber("outsideDegC"),
                form.text("faults"),
                form.text("defects"),
                form.yes("fit"));
        return form.right()
                ? form.filled().answer(driving.log(asked, signedIn.actor()), path(order), again -> draw(order, again))
                : form.filled().again(again -> draw(order, again));
    }

    private TemplateInstance draw(String order, Filled filled) {
        return RoadPages.road(view(order, filled));
    }

    private RoadView view(String order, Filled filled) {
        RoadRules rules =
                look.at(ledger.history(Numbers.subject(order)), signedIn.now()).orElseThrow(NotFoundException::new);
        return new RoadView(rules, drivers(rules), doors(), RoadDrive.odometerKm(rules, rules.use()), filled);
    }

    private List<Option> drivers(RoadRules rules) {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .filter(row -> rules.against(look.person(row.number)).isEmpty())
                .map(row -> new Option(row.number, PersonInWords.name(row.number) + ", " + row.number))
                .toList();
    }

    private RoadView.Doors doors() {
        return new RoadView.Doors(
                signedIn.is(Role.inspector),
                Arrays.asList(Role.technician, Role.teamLeader, Role.inspector, Role.handoverClerk, Role.lineManager)
                        .stream()
                        .anyMatch(signedIn::is));
    }

    private static String path(String order) {
        return "/orders/" + order + "/road";
    }
}
