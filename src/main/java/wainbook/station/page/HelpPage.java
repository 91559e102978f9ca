package wainbook.station.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.station.StationSaying.Help;
import wainbook.station.help.Calling;
import wainbook.station.help.HelpCall;

/** Help is called from the station page, and answered and settled on the call's own. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/help")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class HelpPage {

    private final Ledger ledger;
    private final Calling calling;
    private final SignedIn signedIn;

    HelpPage(Ledger ledger, Calling calling, SignedIn signedIn) {
        this.ledger = ledger;
        this.calling = calling;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String order) {
        return calls(Filled.fresh(), order);
    }

    /** Without a word on who is meant the team leader is: a call is not sent back over a field. */
    @POST
    public Response call(
            String order,
            @RestForm String id,
            @RestForm String help,
            @RestForm String words,
            @RestForm Optional<String> stands) {
        known(order);
        Filled filled = Filled.sent(id).with("words", words);
        Help called = Arrays.stream(Help.values())
                .filter(one -> one.name().equals(help))
                .findFirst()
                .orElse(Help.TEAM_LEADER);
        var asked = new Calling.ToCall(filled.id(), order, called, words(filled), stands.isPresent());
        return filled.answer(
                calling.call(asked, signedIn.actor()),
                HelpView.after(order, known(order)),
                again -> calls(again, order));
    }

    @GET
    @Path("{call: [0-9]{1,6}}")
    public TemplateInstance help(String order, int call) {
        return StationPages.help(Filled.fresh(), view(order, call));
    }

    @POST
    @Path("{call: [0-9]{1,6}}/answered")
    public Response answer(String order, int call, @RestForm String id) {
        Filled filled = Filled.sent(id);
        return answered(filled, order, call)
                .apply(calling.answer(new Calling.ToAnswer(filled.id(), order, call), signedIn.actor()));
    }

    @POST
    @Path("{call: [0-9]{1,6}}/resolved")
    public Response resolve(String order, int call, @RestForm String id, @RestForm String words) {
        Filled filled = Filled.sent(id).with("words", words);
        return answered(filled, order, call)
                .apply(calling.resolve(
                        new Calling.ToResolve(filled.id(), order, call, words(filled)), signedIn.actor()));
    }

    private Function<Outcome<Entry>, Response> answered(Filled filled, String order, int call) {
        view(order, call);
        return outcome -> filled.answer(
                outcome, HelpCall.path(order, call), again -> StationPages.help(again, view(order, call)));
    }

    private TemplateInstance calls(Filled filled, String order) {
        return StationPages.call(
                filled,
                order,
                HelpView.helps(),
                HelpView.open(order, known(order), signedIn.actor().who()));
    }

    private static Optional<String> words(Filled filled) {
        return Optional.of(filled.value("words")).filter(text -> !text.isEmpty());
    }

    private HelpView view(String order, int call) {
        return HelpCall.of(known(order), call)
                .map(known -> new HelpView(order, known, signedIn.actor().who()))
                .orElseThrow(NotFoundException::new);
    }

    private History known(String order) {
        History history = ledger.history(Numbers.subject(order));
        if (history.isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}
