package wainbook.line.page;

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
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.move.Move;
import wainbook.line.move.Move.ToMove;
import wainbook.line.move.MoveRules;
import wainbook.line.page.MoveChoices.Choice;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** The form by which a vehicle is moved. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/move")
@RolesAllowed({Role.teamLeader, Role.lineManager})
@Produces(MediaType.TEXT_HTML)
public class MovePage {

    private final Ledger ledger;
    private final Move move;
    private final MoveLook look;
    private final SignedIn signedIn;

    MovePage(Ledger ledger, Move move, MoveLook look, SignedIn signedIn) {
        this.ledger = ledger;
        this.move = move;
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String order) {
        return draw(Filled.fresh(), order);
    }

    @POST
    public Response move(
            String order,
            @RestForm String id,
            @RestForm Optional<Long> seen,
            @RestForm String way,
            @RestForm List<String> confirmed,
            @RestForm String reason) {
        Filled filled = Filled.sent(id).with("way", way).with("reason", reason);
        for (String key : confirmed) {
            filled = filled.with(key, "yes");
        }
        Filled checked = checked(filled, confirmed);
        if (!checked.right()) {
            return checked.again(again -> draw(again, order));
        }
        Choice choice = MoveChoices.read(filled.value("way")).orElseThrow();
        Optional<String> why = Optional.of(filled.value("reason")).filter(text -> !text.isEmpty());
        var asked =
                new ToMove(filled.id(), order, choice.direction(), choice.to(), choice.stage(), confirmed, why, seen);
        Outcome<Entry> outcome = move.move(asked, signedIn.actor());
        return filled.answer(outcome, "/orders/" + order, again -> draw(again, order));
    }

    private static Filled checked(Filled filled, List<String> confirmed) {
        Filled checked =
                MoveChoices.read(filled.value("way")).isEmpty() ? filled.wrong("way", "line.wayMissing") : filled;
        for (String key : MoveRules.CONFIRMED) {
            if (!confirmed.contains(key)) {
                checked = checked.wrong(key, "line.confirmFirst", Words.of("line." + key));
            }
        }
        return checked;
    }

    private TemplateInstance draw(Filled filled, String order) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return LinePages.move(filled, look.of(history, known));
    }
}
