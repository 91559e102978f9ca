package wainbook.paper.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Redirect;
import wainbook.paper.PaperForm;
import wainbook.paper.PaperForms;
import wainbook.paper.PaperSaying.FormsPrinted;
import wainbook.paper.Printing;
import wainbook.paper.Sort;
import wainbook.paper.page.sheet.SheetLook;

/** All forms, and how new ones are printed. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class FormsPage {

    private final PaperLook look;
    private final SheetLook sheets;
    private final Printing printing;
    private final SignedIn signedIn;

    FormsPage(PaperLook look, SheetLook sheets, Printing printing, SignedIn signedIn) {
        this.look = look;
        this.sheets = sheets;
        this.printing = printing;
        this.signedIn = signedIn;
    }

    /** A number that is typed or scanned in full leads to its form. */
    @GET
    @Path("paper")
    public Response forms(
            @RestQuery Optional<String> state, @RestQuery Optional<String> text, @RestQuery Optional<Integer> page) {
        String wanted = text.orElse("").strip();
        Optional<PaperForm> scanned =
                wanted.matches("(?i)F-\\d{4,9}") ? look.forms().code(wanted) : Optional.empty();
        return scanned.map(form -> Redirect.to("/paper/" + form.code()))
                .orElseGet(() -> Response.ok(draw(state.orElse(""), wanted, Math.max(1, page.orElse(1))))
                        .build());
    }

    private TemplateInstance draw(String state, String text, int page) {
        return PaperPages.forms(look.list(state, text, page, Filled.fresh().with("count", "5")));
    }

    @GET
    @Path("paper.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> state, @RestQuery Optional<String> text) {
        return Csv.file(
                "paper-forms",
                Arrays.asList(Words.of("paper.csvHeader").split(";")),
                look.lines(state.orElse(""), text.orElse("").strip()).stream()
                        .map(FormLine::cells)
                        .toList());
    }

    @GET
    @Path("paper/print")
    public TemplateInstance print(@RestQuery Optional<Integer> from, @RestQuery Optional<Integer> to) {
        int first = from.orElse(0);
        int last = Math.min(to.orElse(first), first + 10 * Printing.MOST);
        PaperForms forms = look.forms();
        return PaperPages.sheets(IntStream.rangeClosed(first, last)
                .mapToObj(forms::number)
                .flatMap(Optional::stream)
                .map(sheets::of)
                .toList());
    }

    @POST
    @Path("paper/blank")
    public Response blank(@RestForm String id, @RestForm String sort, @RestForm String count) {
        Filled filled = Filled.sent(id).with("sort", sort).with("count", count);
        Optional<Sort> wanted = sort(filled.value("sort"));
        if (wanted.isEmpty()) {
            filled = filled.wrong("sort", "paper.sortMissing");
        }
        if (!filled.value("count").matches("\\d{1,4}")) {
            filled = filled.wrong("count", "paper.countWrong", Printing.MOST);
        }
        if (!filled.right()) {
            return filled.again(this::again);
        }
        int number = Integer.parseInt(filled.value("count"));
        return printed(
                filled,
                printing.print(new Printing.ToPrintBlank(filled.id(), wanted.get(), number), signedIn.actor()),
                number);
    }

    @POST
    @Path("paper/for-vehicle")
    public Response forVehicle(@RestForm String id, @RestForm String sort, @RestForm String vehicle) {
        Filled filled = Filled.sent(id).with("sort", sort).with("vehicle", vehicle);
        Optional<Sort> wanted = sort(filled.value("sort"));
        if (wanted.isEmpty()) {
            return filled.wrong("sort", "paper.sortMissing").again(this::again);
        }
        var asked = new Printing.ToPrintFor(filled.id(), wanted.get(), List.of(filled.value("vehicle")));
        return printed(filled, printing.print(asked, signedIn.actor()), 1);
    }

    /** The day’s print: a sheet of open items for every vehicle at a stage. */
    @POST
    @Path("paper/open-items")
    public Response openItems(@RestForm String id) {
        Filled filled = Filled.sent(id);
        List<String> vehicles = look.atStages();
        var asked = new Printing.ToPrintFor(filled.id(), Sort.ITEMS, vehicles);
        return printed(filled, printing.print(asked, signedIn.actor()), vehicles.size());
    }

    private Response printed(Filled filled, Outcome<Entry> outcome, int count) {
        return outcome.fold(
                entry -> {
                    int first = ((FormsPrinted) entry.saying()).first();
                    return Redirect.to("/paper/print?from=" + first + "&to=" + (first + count - 1));
                },
                reasons -> filled.refused(reasons).again(this::again));
    }

    private TemplateInstance again(Filled filled) {
        return PaperPages.forms(look.list("", "", 1, filled));
    }

    private static Optional<Sort> sort(String name) {
        return Arrays.stream(Sort.values())
                .filter(one -> one.name().equals(name))
                .findFirst();
    }
}
