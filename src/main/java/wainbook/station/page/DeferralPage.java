package wainbook.station.page;

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
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.station.StationSaying.Bar;
import wainbook.station.deferral.Deferral;
import wainbook.station.page.DeferralView.Way;
import wainbook.works.Role;

/** The forms by which an item that cannot be done now is given to a later stage. */
@Path("/station/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/{item}/later")
@Produces(MediaType.TEXT_HTML)
public class DeferralPage {

    private final DeferralLook look;
    private final Deferral deferral;
    private final SignedIn signedIn;

    DeferralPage(DeferralLook look, Deferral deferral, SignedIn signedIn) {
        this.look = look;
        this.deferral = deferral;
        this.signedIn = signedIn;
    }

    /** Open to everybody: who may not do it finds here who may. */
    @GET
    @Authenticated
    public TemplateInstance later(String order, String item, @RestQuery Optional<String> way) {
        return StationPages.later(look.of(order, item, signedIn.now(), way.flatMap(Way::of), Optional.empty()));
    }

    @POST
    @Path("re-sequenced")
    @RolesAllowed(Role.worksEngineer)
    public Response reSequence(
            String order,
            String item,
            @RestForm String id,
            @RestForm String toStage,
            @RestForm List<String> bars,
            @RestForm String reason) {
        Filled filled = Filled.sent(id).with("toStage", toStage).with("reason", reason);
        List<Bar> ticked = Arrays.stream(Bar.values())
                .filter(bar -> bars.contains(bar.name()))
                .toList();
        for (Bar bar : ticked) {
            filled = filled.with(bar.name(), "yes");
        }
        var asked = new Deferral.ToReSequence(
                filled.id(), order, item, filled.value("toStage"), ticked, filled.value("reason"));
        return filled.answer(
                deferral.reSequence(asked, signedIn.actor()),
                "/station/" + order,
                again -> draw(order, item, Way.RE_SEQUENCE, again));
    }

    @POST
    @Path("carried-over")
    @RolesAllowed({Role.teamLeader, Role.lineManager, Role.worksEngineer})
    public Response carryOver(
            String order,
            String item,
            @RestForm String id,
            @RestForm String toStage,
            @RestForm String owner,
            @RestForm String reason) {
        Filled filled =
                Filled.sent(id).with("toStage", toStage).with("owner", owner).with("reason", reason);
        var asked = new Deferral.ToCarryOver(
                filled.id(), order, item, filled.value("toStage"), filled.value("owner"), filled.value("reason"));
        return filled.answer(
                deferral.carryOver(asked, signedIn.actor()),
                "/station/" + order,
                again -> draw(order, item, Way.CARRY_OVER, again));
    }

    @POST
    @Path("handed-on")
    @RolesAllowed({Role.lineManager, Role.worksEngineer, Role.qualityEngineer})
    public Response handOn(String order, String item, @RestForm String id, @RestForm String reason) {
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Deferral.ToHandOn(filled.id(), order, item, filled.value("reason"));
        return filled.answer(
                deferral.handOn(asked, signedIn.actor()),
                "/station/" + order,
                again -> draw(order, item, Way.HAND_ON, again));
    }

    private TemplateInstance draw(String order, String item, Way way, Filled again) {
        return StationPages.later(look.of(order, item, signedIn.now(), Optional.of(way), Optional.of(again)));
    }
}
