package wainbook.setup.password;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.setup.password.NewPassword.ToSet;
import wainbook.works.PersonRow;
import wainbook.works.signin.Passwords;

/** Where everybody changes their own password. */
@Path("/password")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class OwnPasswordPage {

    private final NewPassword newPassword;
    private final Passwords passwords;
    private final SignedIn signedIn;

    OwnPasswordPage(NewPassword newPassword, Passwords passwords, SignedIn signedIn) {
        this.newPassword = newPassword;
        this.passwords = passwords;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form() {
        return draw(Filled.fresh());
    }

    @POST
    public Response change(
            @RestForm String id, @RestForm String password, @RestForm String again, @RestForm String own) {
        Filled filled = Filled.sent(id);
        String who = signedIn.actor().who();
        String typed = Objects.toString(password, "");
        if (!passwords.areOf(who, Objects.toString(own, ""))) {
            filled = filled.wrong("own", "setup.ownPasswordWrong");
        }
        if (!typed.equals(again)) {
            filled = filled.wrong("again", "setup.passwordsDiffer");
        }
        return filled.right()
                ? filled.answer(
                        newPassword.set(new ToSet(filled.id(), who, true), typed, signedIn.actor()),
                        "/tokens",
                        this::draw)
                : filled.again(this::draw);
    }

    private TemplateInstance draw(Filled filled) {
        PersonRow row =
                PersonRow.<PersonRow>findByIdOptional(signedIn.actor().who()).orElseThrow(NotFoundException::new);
        return PasswordsPage.Templates.password(PasswordsPage.Line.of(row), true, filled);
    }
}
