package wainbook.works.people;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Person;
import wainbook.works.Role;

/** People for scripts, by number: names stay on the pages. */
@Path("/api/v1/people")
public class PeopleApi {

    /** All roles from now on. */
    public record Roles(UUID id, List<Role> roles, Optional<Long> seen) {}

    /** Why. */
    public record Why(UUID id, String reason, Optional<Long> seen) {}

    /** A competence, both days included. */
    public record Given(
            UUID id,
            String competence,
            int level,
            LocalDate validFrom,
            LocalDate validTo,
            String evidence,
            Optional<Long> seen) {}

    private static final String ONE = "{number: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}";

    private final Roster roster;
    private final Staff staff;
    private final SignedIn signedIn;

    PeopleApi(Roster roster, Staff staff, SignedIn signedIn) {
        this.roster = roster;
        this.staff = staff;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Person> everybody() {
        return roster.everybody().stream().map(Roster.Member::person).toList();
    }

    @POST
    @Path(ONE + "/roles")
    @RolesAllowed(Role.administrator)
    public Response roles(String number, Roles body) {
        return Receipt.of(
                staff.changeRoles(new Staff.ToChangeRoles(body.id, number, body.roles, body.seen), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/leaving")
    @RolesAllowed(Role.administrator)
    public Response leave(String number, Why body) {
        return Receipt.of(staff.leave(new Staff.ToLeave(body.id, number, body.reason, body.seen), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/competences")
    @RolesAllowed({Role.administrator, Role.worksEngineer, Role.qualityEngineer})
    public Response give(String number, Given body) {
        return Receipt.of(staff.give(
                new Staff.ToGive(
                        body.id,
                        number,
                        body.competence,
                        body.level,
                        body.validFrom,
                        body.validTo,
                        body.evidence,
                        body.seen),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/competences/{competence}/withdrawal")
    @RolesAllowed({Role.administrator, Role.worksEngineer, Role.qualityEngineer})
    public Response withdraw(String number, String competence, Why body) {
        return Receipt.of(staff.withdraw(
                new Staff.ToWithdraw(body.id, number, competence, body.reason, body.seen), signedIn.actor()));
    }
}
