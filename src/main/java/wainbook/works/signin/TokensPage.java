package wainbook.works.signin;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;

/** One's own tokens: made here, shown once, taken back here. */
@Path("/tokens")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class TokensPage {

    private static final int LONGEST_TITLE = 80;

    @CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance tokens(TokensView view);
    }

    private final Tokens tokens;
    private final SignedIn signedIn;

    TokensPage(Tokens tokens, SignedIn signedIn) {
        this.tokens = tokens;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance all() {
        return draw(Form.EMPTY, Optional.empty());
    }

    /** The answer holds the token and is nowhere kept: not by us, nor by the browser. */
    @POST
    public Response make(@RestForm String title) {
        String named = Objects.toString(title, "").strip();
        Form form = Form.of(Map.of("title", named));
        if (named.isEmpty() || named.length() > LONGEST_TITLE) {
            Form faulty = form.wrong("title", "works.tokenTitleFault", LONGEST_TITLE);
            return Response.status(422).entity(draw(faulty, Optional.empty())).build();
        }
        String token = tokens.make(signedIn.actor().who(), named);
        return Response.ok(draw(Form.EMPTY, Optional.of(new TokensView.Made(named, token))))
                .header("Cache-Control", "no-store")
                .build();
    }

    @POST
    @Path("{token}/withdrawal")
    public Response withdraw(String token) {
        tokens.takeBack(signedIn.actor().who(), token);
        return Redirect.to("/tokens");
    }

    private TemplateInstance draw(Form form, Optional<TokensView.Made> made) {
        String person = signedIn.actor().who();
        return Templates.tokens(new TokensView(tokens.userName(person), tokens.of(person), form, made));
    }
}
