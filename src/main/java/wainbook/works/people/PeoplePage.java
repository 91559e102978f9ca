package wainbook.works.people;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.people.Names.Newcomer;
import wainbook.works.people.Roster.Member;

/** Everybody as a list and as a matrix of competences, and the form for somebody new. */
@Path("/people")
@Produces(MediaType.TEXT_HTML)
public class PeoplePage {

    /** Works rule: long enough not to be guessed at three tries a minute. */
    private static final int SHORTEST_PASSWORD = 12;

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private final Roster roster;
    private final Staff staff;
    private final SignedIn signedIn;

    PeoplePage(Roster roster, Staff staff, SignedIn signedIn) {
        this.roster = roster;
        this.staff = staff;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance people(
            @RestQuery Optional<String> search, @RestQuery Optional<String> role, @RestQuery Optional<String> left) {
        String text = search.map(String::strip).orElse("");
        Form form =
                Form.EMPTY.with("search", text).with("role", role.orElse("")).with("left", left.orElse(""));
        String csv = "/people/people.csv?search=" + URLEncoder.encode(text, StandardCharsets.UTF_8) + "&role="
                + role.flatMap(Role::of).map(Role::word).orElse("") + "&left="
                + left.filter("yes"::equals).orElse("");
        return PeoplePages.people(
                new PeopleViews.Listed(found(search, role, left), form, csv, signedIn.is(Role.administrator)));
    }

    @GET
    @Path("people.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(
            @RestQuery Optional<String> search, @RestQuery Optional<String> role, @RestQuery Optional<String> left) {
        List<List<String>> rows = found(search, role, left).stream()
                .map(one -> List.of(one.person().number(), one.name(), one.roles()))
                .toList();
        return Csv.file("people", Arrays.asList(Words.of("works.peopleHeader").split(";")), rows);
    }

    @GET
    @Path("new")
    @RolesAllowed(Role.administrator)
    public TemplateInstance form() {
        return engaging(Filled.fresh(), List.of());
    }

    @POST
    @Path("new")
    @RolesAllowed(Role.administrator)
    public Response engage(
            @RestForm String id,
            @RestForm String number,
            @RestForm String name,
            @RestForm String user,
            @RestForm String password,
            @RestForm List<String> roles) {
        Filled filled =
                Filled.sent(id).with("number", number).with("name", name).with("user", user);
        String secret = password == null ? "" : password;
        Filled checked = checked(filled, secret);
        if (!checked.right()) {
            return checked.again(again -> engaging(again, roles));
        }
        var asked = new Staff.ToEngage(filled.id(), filled.value("number"), roles(roles));
        var newcomer = new Newcomer(filled.value("number"), filled.value("name"), filled.value("user"), secret);
        return filled.answer(
                staff.engage(asked, newcomer, signedIn.actor()),
                "/people/" + filled.value("number"),
                again -> engaging(again, roles));
    }

    private TemplateInstance engaging(Filled filled, List<String> ticked) {
        return PeoplePages.engage(new PeopleViews.Engaging(filled, ticked, roster.lastNumber()));
    }

    static List<Role> roles(List<String> words) {
        return words.stream().flatMap(word -> Role.of(word).stream()).distinct().toList();
    }

    private static Filled checked(Filled filled, String secret) {
        Filled checked = filled;
        if (!filled.value("number").matches(CODE)) {
            checked = checked.wrong("number", "works.codeFault");
        }
        if (filled.value("name").isEmpty() || filled.value("name").length() > 200) {
            checked = checked.wrong("name", "works.nameFault");
        }
        if (!filled.value("user").matches(CODE)) {
            checked = checked.wrong("user", "works.codeFault");
        }
        // BCrypt reads 72 bytes at most: what comes after would not count.
        if (secret.length() < SHORTEST_PASSWORD || secret.getBytes(StandardCharsets.UTF_8).length > 72) {
            checked = checked.wrong("password", "works.passwordFault", SHORTEST_PASSWORD);
        }
        return checked;
    }

    private List<Member> found(Optional<String> search, Optional<String> role, Optional<String> left) {
        return roster.found(
                search.map(String::strip).orElse(""),
                role.flatMap(Role::of),
                left.filter("yes"::equals).isPresent());
    }
}
