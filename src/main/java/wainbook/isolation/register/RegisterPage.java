package wainbook.isolation.register;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.isolation.IsolationSaying.ItemRegistered;
import wainbook.isolation.fact.Register;
import wainbook.isolation.step.LockRow;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;

/** The register of locks, boxes, tags and keys, and their labels. */
@Path("/locks")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class RegisterPage {

    private final Ledger ledger;
    private final Registering registering;
    private final SignedIn signedIn;

    RegisterPage(Ledger ledger, Registering registering, SignedIn signedIn) {
        this.ledger = ledger;
        this.registering = registering;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance locks(@RestQuery Optional<String> search) {
        return draw(Filled.fresh(), search.map(String::strip).orElse(""));
    }

    @POST
    public Response register(
            @RestForm String id, @RestForm String number, @RestForm String sort, @RestForm String owner) {
        Filled filled =
                Filled.sent(id).with("number", number).with("sort", sort).with("owner", owner);
        Optional<Register.Sort> chosen = Arrays.stream(Register.Sort.values())
                .filter(one -> one.name().equals(filled.value("sort")))
                .findFirst();
        if (chosen.isEmpty()) {
            return filled.wrong("sort", "isolating.sortMissing").again(again -> draw(again, ""));
        }
        var asked = new Registering.ToRegister(
                filled.id(),
                filled.value("number"),
                chosen.get(),
                Optional.of(filled.value("owner")).filter(text -> !text.isEmpty()));
        return filled.answer(registering.register(asked, signedIn.actor()), "/locks", again -> draw(again, ""));
    }

    @POST
    @Path("{number}/retirement")
    public Response retire(String number, @RestForm String id, @RestForm String reason) {
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Registering.ToRetire(filled.id(), number, filled.value("reason"));
        return filled.answer(registering.retire(asked, signedIn.actor()), "/locks", again -> draw(again, ""));
    }

    @GET
    @Path("labels")
    public TemplateInstance labels(@RestQuery Optional<String> number) {
        return RegisterPages.labels(items().stream()
                .filter(item -> number.map(item.number()::equals).orElse(!item.retired()))
                .map(item -> Label.of(item, item.owner().map(RegisterPage::name).orElse("")))
                .toList());
    }

    private TemplateInstance draw(Filled filled, String search) {
        List<RegisterLook.Line> lines = items().stream()
                .map(item -> new RegisterLook.Line(
                        item,
                        RegisterLook.what(item.sort()),
                        item.owner().map(RegisterPage::name).orElse(""),
                        LockRow.at(item.number()).orElse(""),
                        UUID.randomUUID()))
                .filter(line -> line.holds(search))
                .toList();
        List<Option> sorts = Arrays.stream(Register.Sort.values())
                .map(sort -> new Option(sort.name(), RegisterLook.what(sort)))
                .toList();
        List<Option> people = PersonRow.everybody().stream()
                .map(row -> new Option(row.number, name(row.number)))
                .toList();
        var any = new ItemRegistered("–", Register.Sort.LOCK, Optional.empty());
        return RegisterPages.locks(
                new RegisterLook(lines, filled, registering.against(any, signedIn.now()), sorts, people, search));
    }

    private List<Register.Item> items() {
        return Register.of(ledger.history(Subject.works())).items().stream()
                .sorted(Comparator.comparing(Register.Item::sort).thenComparing(Register.Item::number))
                .toList();
    }

    private static String name(String number) {
        return PersonName.of(number).map(row -> row.fullName + " " + number).orElse(number);
    }
}
