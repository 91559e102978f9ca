package wainbook.setup.password;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.setup.password.NewPassword.ToSet;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.signin.Passwords;
import wainbook.works.signin.SignInRow;

/** Where the administrator gives somebody a password to begin with. */
@Path("/setup/passwords")
@RolesAllowed(Role.administrator)
@Produces(MediaType.TEXT_HTML)
public class PasswordsPage {

    /** A person in the list. */
    public record Line(String number, String name, String user, String roles) {
        static Line of(PersonRow row) {
            return new Line(
                    row.number,
                    PersonName.of(row.number).map(known -> known.fullName).orElse(row.number),
                    SignInRow.ofPerson(row.number).map(known -> known.userName).orElse(row.number),
                    String.join(", ", row.roleWords()).replace('-', ' '));
        }

        boolean fits(String search) {
            return Stream.of(number, name, user)
                    .anyMatch(text -> text.toLowerCase(Words.LOCALE).contains(search.toLowerCase(Words.LOCALE)));
        }
    }

    /** The list as it was searched, and whose password was set just now. */
    public record Listed(List<Line> people, String search, Optional<Line> done) {
        public Optional<String> told() {
            return done.map(one -> Words.of("setup.passwordSet", one.name(), one.user()));
        }
    }

    @CheckedTemplate(basePath = "setup", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance passwords(Listed list);

        static native TemplateInstance password(Line person, boolean own, Filled filled);
    }

    private final NewPassword newPassword;
    private final Passwords passwords;
    private final SignedIn signedIn;

    PasswordsPage(NewPassword newPassword, Passwords passwords, SignedIn signedIn) {
        this.newPassword = newPassword;
        this.passwords = passwords;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance people(@RestQuery Optional<String> search, @RestQuery Optional<String> done) {
        String text = search.map(String::strip).orElse("");
        List<Line> all = PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(Line::of)
                .toList();
        return Templates.passwords(new Listed(
                all.stream().filter(one -> one.fits(text)).toList(),
                text,
                all.stream()
                        .filter(one -> done.filter(one.number()::equals).isPresent())
                        .findFirst()));
    }

    @GET
    @Path("{person}")
    public TemplateInstance form(String person) {
        return draw(Filled.fresh(), person);
    }

    @POST
    @Path("{person}")
    public Response set(
            String person,
            @RestForm String id,
            @RestForm String password,
            @RestForm String again,
            @RestForm String own) {
        Filled filled = Filled.sent(id);
        Line known = line(person);
        String typed = Objects.toString(password, "");
        if (!typed.equals(again)) {
            filled = filled.wrong("again", "setup.passwordsDiffer");
        }
        String who = signedIn.actor().who();
        if (!passwords.areOf(who, Objects.toString(own, ""))) {
            filled = filled.wrong("own", "setup.ownPasswordWrong");
        }
        if (!filled.right()) {
            return filled.again(faulty -> draw(faulty, person));
        }
        return filled.answer(
                newPassword.set(new ToSet(filled.id(), known.number(), person.equals(who)), typed, signedIn.actor()),
                "/setup/passwords?done=" + known.number(),
                faulty -> draw(faulty, person));
    }

    private static TemplateInstance draw(Filled filled, String person) {
        return Templates.password(line(person), false, filled);
    }

    private static Line line(String person) {
        return PersonRow.<PersonRow>findByIdOptional(person)
                .filter(row -> !row.hasLeft)
                .map(Line::of)
                .orElseThrow(NotFoundException::new);
    }
}
