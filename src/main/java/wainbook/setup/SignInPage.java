package wainbook.setup;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.FormAuthenticationMechanism;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Pages;
import wainbook.page.SignIn;
import wainbook.page.SignIn.After;
import wainbook.page.api.Redirect;
import wainbook.page.live.Live;
import wainbook.process.Releases;
import wainbook.setup.start.StartCode;
import wainbook.works.Role;
import wainbook.works.signin.Throttle;

/** In and out. */
@Path("/")
public class SignInPage {

    private final DemoWorks demo;
    private final Throttle throttle;
    private final StartCode code;
    private final Releases releases;
    private final Live live;

    SignInPage(DemoWorks demo, Throttle throttle, StartCode code, Releases releases, Live live) {
        this.demo = demo;
        this.throttle = throttle;
        this.code = code;
        this.releases = releases;
        this.live = live;
    }

    /** A part of a page that asks without a session is sent to sign in as a whole page, not inside the part. */
    @GET
    @Path("/sign-in")
    @PermitAll
    public Response signIn(@RestQuery Optional<String> failed, HttpHeaders headers, @Context RoutingContext web) {
        if (code.open()) {
            return Redirect.to("/first-start");
        }
        if (headers.getHeaderString("HX-Request") != null) {
            return Response.ok().header("HX-Redirect", "/sign-in").build();
        }
        String address = web.request().remoteAddress().hostAddress();
        After after = !throttle.wait("", address).isZero()
                ? After.THROTTLED
                : failed.map(yes -> After.FAILED).orElse(After.NOTHING);
        Optional<SignIn.Demo> way =
                demo.wanted() ? Optional.of(new SignIn.Demo(demo.users(), DemoWorks.PASSWORD)) : Optional.empty();
        TemplateInstance page = Pages.signIn(new SignIn(after, way));
        return Response.ok(page).build();
    }

    @POST
    @Path("/sign-out")
    @PermitAll
    public Response signOut(@Context SecurityIdentity identity, @Context RoutingContext web) {
        if (!identity.isAnonymous()) {
            String person = identity.getPrincipal().getName();
            FormAuthenticationMechanism.logout(identity);
            // Not before the browser is told: a page that loads itself with the old cookie would be signed in still.
            web.addEndHandler(told -> live.signedOut(person));
        }
        return Response.seeOther(URI.create("/sign-in")).build();
    }

    @GET
    @PermitAll
    public Response start(@Context SecurityIdentity identity) {
        if (code.open()) {
            return Redirect.to("/first-start");
        }
        boolean toSetUp =
                identity.hasRole(Role.administrator) && releases.stages().isEmpty();
        return Redirect.to(toSetUp ? "/setup/works" : "/line");
    }
}
