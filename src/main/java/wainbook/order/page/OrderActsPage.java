package wainbook.order.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.Ledger;
import wainbook.order.FactQuestion;
import wainbook.order.Intake;
import wainbook.order.Numbers;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldChoices;
import wainbook.order.hold.HoldInWords;
import wainbook.order.hold.Holding;
import wainbook.order.specification.OfferedFacts;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.process.VehicleFacts;
import wainbook.works.Role;

/** The forms of one work order: its donor, a fact, a hold and its release. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class OrderActsPage {

    private final Ledger ledger;
    private final Intake intake;
    private final Ordering ordering;
    private final Holding holding;
    private final SignedIn signedIn;

    OrderActsPage(Ledger ledger, Intake intake, Ordering ordering, Holding holding, SignedIn signedIn) {
        this.ledger = ledger;
        this.intake = intake;
        this.ordering = ordering;
        this.holding = holding;
        this.signedIn = signedIn;
    }

    @GET
    @Path("donor")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.lineManager})
    public TemplateInstance donor(String order) {
        return OrderPages.donor(Filled.fresh().against(intake.against(known(order))), order);
    }

    @POST
    @Path("donor")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.lineManager})
    public Response donor(
            String order,
            @RestForm String id,
            @RestForm String vin,
            @RestForm String registration,
            @RestForm String odometerKm) {
        known(order);
        Filled filled = Filled.sent(id)
                .with("vin", vin)
                .with("registration", registration)
                .with("odometerKm", odometerKm);
        if (!filled.value("odometerKm").matches("\\d{1,8}")) {
            return filled.wrong("odometerKm", "order.odometer", filled.value("odometerKm"))
                    .again(again -> OrderPages.donor(again, order));
        }
        var asked = new Intake.ToReceive(
                filled.id(),
                order,
                filled.value("vin"),
                filled.value("registration"),
                Integer.parseInt(filled.value("odometerKm")));
        return filled.answer(
                intake.receive(asked, signedIn.actor()), "/orders/" + order, again -> OrderPages.donor(again, order));
    }

    @GET
    @Path("facts")
    @RolesAllowed({Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public TemplateInstance fact(String order, @RestQuery Optional<String> fact) {
        Optional<String> stated = fact.map(known(order).facts()::get);
        Optional<String> offered = fact.filter(asked -> stated.isEmpty())
                .flatMap(asked -> OfferedFacts.of(ledger.history(Numbers.subject(order)), asked));
        Filled filled = Filled.fresh().with("stated", stated.or(() -> offered).orElse(""));
        return draw(offered.isPresent() ? filled.with("offered", "true") : filled, order, fact.orElse(""));
    }

    @POST
    @Path("facts")
    @RolesAllowed({Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response fact(String order, @RestForm String id, @RestForm String fact, @RestForm String stated) {
        known(order);
        Filled filled = Filled.sent(id).with("fact", fact).with("stated", stated);
        FactQuestion question = question(filled.value("fact"), filled.value("stated"));
        if (!VehicleFacts.states(question.fact(), question.stated())) {
            return filled.wrong("stated", "order.factUnread", question.label(), question.hint())
                    .again(again -> draw(again, order, question.fact()));
        }
        var asked = new Ordering.ToState(filled.id(), order, question.fact(), question.stated());
        return filled.answer(
                ordering.state(asked, signedIn.actor()),
                "/orders/" + order + "#facts",
                again -> draw(again, order, question.fact()));
    }

    @GET
    @Path("hold")
    @RolesAllowed({
        Role.technician,
        Role.teamLeader,
        Role.inspector,
        Role.lineManager,
        Role.worksEngineer,
        Role.qualityEngineer
    })
    public TemplateInstance hold(String order) {
        known(order);
        return OrderPages.hold(Filled.fresh(), order, new HoldChoices(EnumSet.allOf(Stops.class)));
    }

    @POST
    @Path("hold")
    @RolesAllowed({
        Role.technician,
        Role.teamLeader,
        Role.inspector,
        Role.lineManager,
        Role.worksEngineer,
        Role.qualityEngineer
    })
    public Response hold(
            String order,
            @RestForm String id,
            @RestForm String kind,
            @RestForm List<String> stops,
            @RestForm String reason) {
        known(order);
        Filled filled = Filled.sent(id).with("kind", kind).with("reason", reason);
        List<Stops> what = Arrays.stream(Stops.values())
                .filter(one -> stops.contains(one.name()))
                .toList();
        var ticked = new HoldChoices(Set.copyOf(what));
        Optional<HoldKind> kindOfHold = Arrays.stream(HoldKind.values())
                .filter(one -> one.name().equals(filled.value("kind")))
                .findFirst();
        if (kindOfHold.isEmpty()) {
            return filled.wrong("kind", "order.holdKindMissing").again(again -> OrderPages.hold(again, order, ticked));
        }
        var asked = new Holding.ToHold(filled.id(), order, kindOfHold.get(), what, filled.value("reason"));
        return filled.answer(
                holding.hold(asked, signedIn.actor()),
                "/orders/" + order + "#holds",
                again -> OrderPages.hold(again, order, ticked));
    }

    @GET
    @Path("holds/{hold}/release")
    @RolesAllowed({Role.lineManager, Role.worksEngineer, Role.qualityEngineer})
    public TemplateInstance release(String order, int hold) {
        return OrderPages.release(
                Filled.fresh()
                        .against(holding.against(order, hold, signedIn.actor().who())),
                order,
                held(order, hold));
    }

    @POST
    @Path("holds/{hold}/release")
    @RolesAllowed({Role.lineManager, Role.worksEngineer, Role.qualityEngineer})
    public Response release(String order, int hold, @RestForm String id, @RestForm String reason) {
        HoldInWords held = held(order, hold);
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Holding.ToRelease(filled.id(), order, hold, filled.value("reason"));
        return filled.answer(
                holding.release(asked, signedIn.actor()),
                "/orders/" + order + "#holds",
                again -> OrderPages.release(again, order, held));
    }

    private TemplateInstance draw(Filled filled, String order, String fact) {
        return OrderPages.fact(
                filled, order, question(fact, filled.value("stated")), Ordering.closed(Optional.of(known(order))));
    }

    private static FactQuestion question(String fact, String stated) {
        if (!VehicleFacts.VOCABULARY.names().contains(fact)) {
            throw new NotFoundException();
        }
        return FactQuestion.of(fact, stated);
    }

    private WorkOrder known(String order) {
        return WorkOrder.of(ledger.history(Numbers.subject(order))).orElseThrow(NotFoundException::new);
    }

    /** Also a hold that was released since, so that a form sent twice finds its way. */
    private HoldInWords held(String order, int hold) {
        return ledger.history(Numbers.subject(order))
                .saying(Held.class)
                .map(HoldInWords::of)
                .filter(said -> said.hold() == hold)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }
}
