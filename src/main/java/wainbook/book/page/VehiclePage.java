package wainbook.book.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The page of one vehicle: the first form of its build book. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class VehiclePage {

    private final Ledger ledger;
    private final VehicleLook look;
    private final SignedIn signedIn;

    VehiclePage(Ledger ledger, VehicleLook look, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance vehicle(String order, @RestQuery Optional<String> kind) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return BookPages.vehicle(look.of(history, known, signedIn.now(), kind.orElse(""), doors()));
    }

    private Vehicle.Doors doors() {
        return new Vehicle.Doors(
                is(Role.technician, Role.teamLeader, Role.lineManager),
                is(Role.teamLeader, Role.lineManager),
                is(
                        Role.technician,
                        Role.teamLeader,
                        Role.inspector,
                        Role.lineManager,
                        Role.worksEngineer,
                        Role.qualityEngineer),
                is(Role.technician, Role.teamLeader, Role.inspector, Role.worksEngineer, Role.qualityEngineer),
                is(Role.qualityEngineer),
                is(Role.lineManager, Role.worksEngineer, Role.qualityEngineer),
                is(Role.worksEngineer, Role.lineManager, Role.handoverClerk),
                is(Role.worksEngineer),
                is(Role.lineManager, Role.teamLeader, Role.worksEngineer),
                is(Role.auditor, Role.qualityEngineer, Role.administrator),
                is(Role.worksEngineer, Role.lineManager, Role.qualityEngineer),
                is(Role.technician, Role.teamLeader, Role.qualityEngineer));
    }

    private boolean is(String... roles) {
        return Arrays.stream(roles).anyMatch(signedIn::is);
    }
}
