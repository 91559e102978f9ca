package wainbook.works.people;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Person;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;
import wainbook.works.signin.SignInRow;

/** One person: roles, competences with their evidence, and the acts that change them. */
@Path("/people")
@Produces(MediaType.TEXT_HTML)
public class PersonPage {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";
    private static final int MOST_LEVEL = 9;

    private final Ledger ledger;
    private final Roster roster;
    private final Staff staff;
    private final WorksDay day;
    private final SignedIn signedIn;

    PersonPage(Ledger ledger, Roster roster, Staff staff, WorksDay day, SignedIn signedIn) {
        this.ledger = ledger;
        this.roster = roster;
        this.staff = staff;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("{number}")
    @Authenticated
    public TemplateInstance person(String number, @RestQuery Optional<String> renew) {
        return draw(number, renew.flatMap(code -> renewal(number, code)).orElseGet(Filled::fresh));
    }

    /** The form filled for the same competence again, from the day after it ends. */
    private Optional<Filled> renewal(String number, String code) {
        Person person = Person.of(known(number));
        LocalDate today = day.of(signedIn.now().at());
        return person.competence(code)
                .map(held -> Filled.fresh()
                        .with("competence", held.code())
                        .with("level", String.valueOf(held.level()))
                        .with(
                                "validFrom",
                                Matrix.cell(person, code, today).nextFrom(today).toString()));
    }

    @POST
    @Path("{number}/roles")
    @RolesAllowed(Role.administrator)
    public Response roles(String number, @RestForm String id, @RestForm long seen, @RestForm List<String> roles) {
        known(number);
        Filled filled = Filled.sent(id);
        var asked = new Staff.ToChangeRoles(filled.id(), number, PeoplePage.roles(roles), Optional.of(seen));
        return answer(number, filled, staff.changeRoles(asked, signedIn.actor()));
    }

    @POST
    @Path("{number}/leaving")
    @RolesAllowed(Role.administrator)
    public Response leave(String number, @RestForm String id, @RestForm long seen, @RestForm String reason) {
        known(number);
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Staff.ToLeave(filled.id(), number, filled.value("reason"), Optional.of(seen));
        return answer(number, filled, staff.leave(asked, signedIn.actor()));
    }

    @POST
    @Path("{number}/competences")
    @RolesAllowed({Role.administrator, Role.worksEngineer, Role.qualityEngineer})
    public Response give(
            String number,
            @RestForm String id,
            @RestForm long seen,
            @RestForm String competence,
            @RestForm String level,
            @RestForm String validFrom,
            @RestForm String validTo,
            @RestForm String evidence) {
        known(number);
        Filled filled = Filled.sent(id)
                .with("competence", competence)
                .with("level", level)
                .with("validFrom", validFrom)
                .with("validTo", validTo)
                .with("evidence", evidence);
        Filled checked = checked(filled);
        if (!checked.right()) {
            return checked.again(again -> draw(number, again));
        }
        var asked = new Staff.ToGive(
                filled.id(),
                number,
                filled.value("competence"),
                Integer.parseInt(filled.value("level")),
                date(filled, "validFrom").orElseThrow(),
                date(filled, "validTo").orElseThrow(),
                filled.value("evidence"),
                Optional.of(seen));
        return answer(number, filled, staff.give(asked, signedIn.actor()));
    }

    @POST
    @Path("{number}/competences/{competence}/withdrawal")
    @RolesAllowed({Role.administrator, Role.worksEngineer, Role.qualityEngineer})
    public Response withdraw(
            String number, String competence, @RestForm String id, @RestForm long seen, @RestForm String reason) {
        known(number);
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Staff.ToWithdraw(filled.id(), number, competence, filled.value("reason"), Optional.of(seen));
        return answer(number, filled, staff.withdraw(asked, signedIn.actor()));
    }

    private Response answer(String number, Filled filled, Outcome<Entry> outcome) {
        return filled.answer(outcome, "/people/" + number, again -> draw(number, again));
    }

    private static Filled checked(Filled filled) {
        Filled checked = filled;
        if (!filled.value("competence").matches(CODE)) {
            checked = checked.wrong("competence", "works.codeFault");
        }
        if (!filled.value("level").matches("[0-" + MOST_LEVEL + "]")) {
            checked = checked.wrong("level", "works.levelFault", MOST_LEVEL);
        }
        for (String field : List.of("validFrom", "validTo")) {
            if (date(filled, field).isEmpty()) {
                checked = checked.wrong(field, "works.dateFault");
            }
        }
        return checked;
    }

    private static Optional<LocalDate> date(Filled filled, String field) {
        try {
            return Optional.of(LocalDate.parse(filled.value(field)));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    private TemplateInstance draw(String number, Filled filled) {
        History history = known(number);
        boolean staffs = signedIn.is(Role.administrator);
        Person person = Person.of(history);
        return PeoplePages.person(new PeopleViews.One(
                roster.member(number),
                staffs ? SignInRow.ofPerson(number).map(row -> row.userName) : Optional.empty(),
                history.number(),
                day.of(signedIn.now().at()),
                filled,
                person.roles().stream().map(Role::word).toList(),
                Staff.againstGiving(number, signedIn.actor().who()),
                staffs && !person.left(),
                !person.left() && mayTrain(signedIn)));
    }

    static boolean mayTrain(SignedIn signedIn) {
        return signedIn.is(Role.administrator) || signedIn.is(Role.worksEngineer) || signedIn.is(Role.qualityEngineer);
    }

    private History known(String number) {
        if (!number.matches(CODE)) {
            throw new NotFoundException();
        }
        History history = ledger.history(Subject.person(number));
        if (history.isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}
