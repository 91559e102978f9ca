package wainbook.quality.containment.page;

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
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.Deciding;
import wainbook.quality.containment.Deciding.Checked;
import wainbook.quality.containment.page.view.DecisionView;
import wainbook.quality.containment.page.view.LetterView;
import wainbook.quality.containment.page.view.VehicleView;
import wainbook.works.Role;
import wainbook.works.WorksSaying;

/** What a containment puts in doubt on one vehicle: its readings, what is decided of them, the letter to its operator. */
@Path("/quality/containments/" + ContainmentsPage.CODE + "/vehicles/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class VehicleDoubtPage {

    private static final String DECIMAL = "-?\\d{1,12}([.]\\d{1,9})?";

    private final Ledger ledger;
    private final ContainmentLook look;
    private final Deciding deciding;
    private final SignedIn signedIn;

    VehicleDoubtPage(Ledger ledger, ContainmentLook look, Deciding deciding, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.deciding = deciding;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance vehicle(String code, String order) {
        return draw(code, order, Filled.fresh(), Set.of());
    }

    private TemplateInstance draw(String code, String order, Filled filled, Set<String> ticked) {
        return ContainmentPages.vehicle(new DecisionView(
                look.known(code), look.vehicle(code, order), filled, ticked, signedIn.is(Role.qualityEngineer)));
    }

    @POST
    @Path("decisions")
    @RolesAllowed(Role.qualityEngineer)
    public Response decide(
            String code,
            String order,
            @RestForm String id,
            @RestForm List<String> places,
            @RestForm String all,
            @RestForm String disposition,
            @RestForm String reason,
            @RestForm String entry,
            @RestForm String person,
            @RestForm String with,
            @RestForm String least,
            @RestForm String most) {
        Filled filled = Filled.sent(id)
                .with("all", all)
                .with("disposition", disposition)
                .with("reason", reason)
                .with("entry", entry)
                .with("person", person)
                .with("with", with)
                .with("least", least)
                .with("most", most);
        Filled checked = checked(filled);
        Set<String> ticked = places == null ? Set.of() : Set.copyOf(places);
        if (!checked.right()) {
            return checked.again(again -> draw(code, order, again, ticked));
        }
        var asked = new Deciding.ToDecide(
                filled.id(),
                order,
                code,
                filled.value("all").equals("yes") ? open(code, order) : Chosen.places(places),
                Disposition.valueOf(filled.value("disposition")),
                filled.value("reason"),
                new Checked(
                        typed(filled, "entry").map(Long::valueOf),
                        typed(filled, "person"),
                        typed(filled, "with"),
                        typed(filled, "least").map(BigDecimal::new),
                        typed(filled, "most").map(BigDecimal::new)));
        return filled.answer(
                deciding.decide(asked, signedIn.actor()),
                look.vehicle(code, order).path(),
                again -> draw(code, order, again, ticked));
    }

    private List<Place> open(String code, String order) {
        return look.vehicle(code, order).open().stream()
                .map(one -> one.said().key())
                .toList();
    }

    private static Filled checked(Filled filled) {
        Filled checked = filled;
        if (Arrays.stream(Disposition.values()).noneMatch(one -> one.name().equals(filled.value("disposition")))) {
            checked = checked.wrong("disposition", "quality.dispositionMissing");
        }
        if (!filled.value("entry").matches("\\d{0,9}")) {
            checked = checked.wrong("entry", "quality.entryFault");
        }
        for (String field : List.of("least", "most")) {
            if (!filled.value(field).isEmpty() && !filled.value(field).matches(DECIMAL)) {
                checked = checked.wrong(field, "quality.decimalFault");
            }
        }
        return checked;
    }

    private static Optional<String> typed(Filled filled, String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty());
    }

    @POST
    @Path("operator")
    @RolesAllowed({Role.qualityEngineer, Role.handoverClerk})
    public Response note(String code, String order, @RestForm String id, @RestForm String word, @RestForm String what) {
        Filled filled = Filled.sent(id).with("word", word).with("what", what);
        Optional<Word> chosen = Arrays.stream(Word.values())
                .filter(one -> one.name().equals(filled.value("word")))
                .findFirst();
        if (chosen.isEmpty()) {
            return filled.wrong("word", "quality.wordMissing").again(again -> draw(code, order, again, Set.of()));
        }
        var asked = new Deciding.ToNote(filled.id(), order, code, chosen.get(), filled.value("what"));
        return filled.answer(
                deciding.note(asked, signedIn.actor()),
                look.vehicle(code, order).path() + "#operator",
                again -> draw(code, order, again, Set.of()));
    }

    /** The letter to the operator; there is none while the vehicle is in the works. */
    @GET
    @Path("letter")
    @Authenticated
    public TemplateInstance letter(String code, String order) {
        VehicleView vehicle = look.vehicle(code, order);
        if (vehicle.order().phase() != WorkOrder.Phase.HANDED_OVER) {
            throw new NotFoundException();
        }
        String works = ledger.history(Subject.works())
                .last(WorksSaying.Named.class)
                .map(WorksSaying.Named::title)
                .orElse("–");
        return ContainmentPages.letter(
                new LetterView(look.known(code), vehicle, works, signedIn.now().at()));
    }
}
