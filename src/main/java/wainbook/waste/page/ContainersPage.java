package wainbook.waste.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.Assessment;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.act.Opening;
import wainbook.works.Role;

/** The containers of waste, and opening one. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ContainersPage {

    private static final String USUAL_DAYS = "90";

    private final WasteLook look;
    private final Opening opening;
    private final SignedIn signedIn;

    ContainersPage(WasteLook look, Opening opening, SignedIn signedIn) {
        this.look = look;
        this.opening = opening;
        this.signedIn = signedIn;
    }

    @GET
    @Path("waste")
    public TemplateInstance list(@RestQuery Optional<String> search, @RestQuery Optional<String> which) {
        return WastePages.containers(asked(search, which));
    }

    @GET
    @Path("waste.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> which) {
        return Csv.file(
                "waste-containers",
                Arrays.asList(Words.of("waste.csvHeader").split(";")),
                asked(search, which).shown().stream().map(ContainerLine::cells).toList());
    }

    private WasteList asked(Optional<String> search, Optional<String> which) {
        return new WasteList(
                look.lines(signedIn.now().at()),
                search.map(String::strip).orElse(""),
                which.orElse(""),
                signedIn.is(Role.technician)
                        || signedIn.is(Role.teamLeader)
                        || signedIn.is(Role.worksEngineer)
                        || signedIn.is(Role.lineManager)
                        || signedIn.is(Role.handoverClerk));
    }

    @GET
    @Path("waste/new")
    public TemplateInstance form(@RestQuery Optional<String> code) {
        return draw(Filled.fresh()
                .with("number", nextLabel())
                .with("code", code.orElse(""))
                .with("measure", Measure.KG.name())
                .with("askAfterDays", USUAL_DAYS));
    }

    /** One more than the highest of the form C-0001. */
    private String nextLabel() {
        int highest = look.lines(signedIn.now().at()).stream()
                .map(line -> line.row().label)
                .filter(label -> label.matches("C-\\d{4,8}"))
                .mapToInt(label -> Integer.parseInt(label.substring(2)))
                .max()
                .orElse(0);
        return String.format("C-%04d", highest + 1);
    }

    private TemplateInstance draw(Filled filled) {
        List<Option> measures = Arrays.stream(Measure.values())
                .map(one -> new Option(one.name(), Words.of("waste.measure." + one.name())))
                .toList();
        return WastePages.make(filled, StripView.codeOptions(), measures);
    }

    @POST
    @Path("waste/new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response open(MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Opening.ToOpen(
                form.filled().id(),
                form.text("number"),
                form.text("code"),
                form.number("capacity"),
                form.one("measure", Measure.values()),
                form.text("place"),
                form.text("bund").equals("yes"),
                form.text("lid").equals("yes"),
                form.text("assessedBy").isEmpty() && form.text("assessedOn").isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Assessment(form.text("assessedBy"), form.text("assessedOn"))),
                form.whole("askAfterDays"));
        return form.right()
                ? form.filled().answer(opening.open(asked, signedIn.actor()), path(asked.label()), this::draw)
                : form.filled().again(this::draw);
    }

    /** A label that cannot be one leads nowhere: the act says so at its field. */
    private static String path(String label) {
        return Labels.fits(label) ? Labels.path(label) : "/waste";
    }
}
