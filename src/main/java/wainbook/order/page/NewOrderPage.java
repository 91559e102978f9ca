package wainbook.order.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.order.Numbers;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.Ordering;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.process.Releases;
import wainbook.works.Role;

/** The form of a new work order. */
@Path("/orders/new")
@RolesAllowed({Role.worksEngineer, Role.lineManager})
@Produces(MediaType.TEXT_HTML)
public class NewOrderPage {

    private final Ordering ordering;
    private final Releases releases;
    private final SignedIn signedIn;

    NewOrderPage(Ordering ordering, Releases releases, SignedIn signedIn) {
        this.ordering = ordering;
        this.releases = releases;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance make() {
        return draw(Filled.fresh(), List.of());
    }

    @POST
    public Response make(
            @RestForm String id,
            @RestForm String number,
            @RestForm String operator,
            @RestForm String variant,
            @RestForm String route,
            @RestForm String promisedOn,
            @RestForm("fact") List<String> facts,
            @RestForm List<String> stated) {
        List<FactStated> known = known(facts, stated);
        Filled filled = Filled.sent(id)
                .with("number", number)
                .with("operator", operator)
                .with("variant", variant)
                .with("route", route)
                .with("promisedOn", promisedOn);
        Optional<LocalDate> day = day(filled.value("promisedOn"));
        Filled checked = checked(filled, day);
        if (!checked.right()) {
            return checked.again(again -> draw(again, known));
        }
        String order = filled.value("number");
        var asked = new Ordering.ToOrder(
                filled.id(),
                order,
                filled.value("operator"),
                filled.value("variant"),
                filled.value("route"),
                day.orElseThrow(),
                known);
        return filled.answer(ordering.order(asked, signedIn.actor()), "/orders/" + order, again -> draw(again, known));
    }

    private static Filled checked(Filled filled, Optional<LocalDate> day) {
        Filled checked = filled;
        if (!filled.value("number").matches(Numbers.FORM)) {
            checked = checked.wrong("number", "order.numberForm");
        }
        if (filled.value("operator").isEmpty()) {
            checked = checked.wrong("operator", "order.operatorMissing");
        }
        if (filled.value("variant").isEmpty()) {
            checked = checked.wrong("variant", "order.variantMissing");
        }
        return day.isEmpty() ? checked.wrong("promisedOn", "order.promisedMissing") : checked;
    }

    private TemplateInstance draw(Filled filled, List<FactStated> known) {
        return OrderPages.make(filled, NewOrder.of(releases, known));
    }

    /** The two lists come from the same rows of the form; what was left open is not stated. */
    private static List<FactStated> known(List<String> facts, List<String> stated) {
        var known = new ArrayList<FactStated>();
        for (int i = 0; i < Math.min(facts.size(), stated.size()); i++) {
            if (!stated.get(i).isBlank()) {
                known.add(new FactStated(facts.get(i), stated.get(i).strip()));
            }
        }
        return known;
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}
