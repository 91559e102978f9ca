package wainbook.setup.start;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Actor;
import wainbook.page.Filled;
import wainbook.page.api.Redirect;
import wainbook.setup.files.Lines;
import wainbook.setup.start.Founding.ToFound;
import wainbook.setup.taking.Asker;
import wainbook.works.Role;
import wainbook.works.signin.Throttle;

/** The page by which a works is begun, for whoever has the code from the server's log. Closed for good once it is. */
@Path("/first-start")
@PermitAll
@Produces(MediaType.TEXT_HTML)
public class FirstStartPage {

    private static final String ACCOUNT = "first start";

    @CheckedTemplate(basePath = "setup", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance firstStart(Filled filled);
    }

    private final StartCode code;
    private final Founding founding;
    private final Throttle throttle;
    private final Clock clock;

    FirstStartPage(StartCode code, Founding founding, Throttle throttle, Clock clock) {
        this.code = code;
        this.founding = founding;
        this.throttle = throttle;
        this.clock = clock;
    }

    @GET
    public Response form() {
        return code.open() ? Response.ok(Templates.firstStart(Filled.fresh())).build() : Redirect.to("/");
    }

    @POST
    public Response begin(
            @RestForm String id,
            @RestForm("code") String typedCode,
            @RestForm String title,
            @RestForm String zone,
            @RestForm String number,
            @RestForm String user,
            @RestForm String name,
            @RestForm String password,
            @RestForm String again,
            @Context RoutingContext web) {
        if (!code.open()) {
            return Redirect.to("/");
        }
        Filled filled = checked(
                Filled.sent(id)
                        .with("code", typedCode)
                        .with("title", title)
                        .with("zone", zone)
                        .with("number", number)
                        .with("user", user)
                        .with("name", name),
                web.request().remoteAddress().hostAddress());
        String typed = Objects.toString(password, "");
        filled = typed.equals(again) ? filled : filled.wrong("again", "setup.passwordsDiffer");
        if (!filled.right()) {
            return filled.again(Templates::firstStart);
        }
        var administrator = new Lines.Person(
                filled.value("number"), filled.value("user"), filled.value("name"), List.of(Role.administrator));
        return filled.answer(
                founding.found(
                        new ToFound(filled.id(), filled.value("title"), filled.value("zone"), administrator),
                        typed,
                        Actor.of(Asker.SETUP, clock)),
                "/sign-in",
                Templates::firstStart);
    }

    private Filled checked(Filled filled, String address) {
        if (!throttle.wait(ACCOUNT, address).isZero()) {
            return filled.wrong("code", "setup.codeThrottled");
        }
        if (!code.right(filled.value("code"))) {
            throttle.failed(ACCOUNT, address);
            return filled.wrong("code", "setup.codeWrong");
        }
        return filled;
    }
}
