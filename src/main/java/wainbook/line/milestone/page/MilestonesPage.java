package wainbook.line.milestone.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.line.milestone.MilestoneLook;
import wainbook.page.Csv;
import wainbook.page.Leaf;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The milestones of every order. */
@Path("/milestones")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class MilestonesPage {

    private final MilestoneLook look;
    private final WorksDay day;
    private final SignedIn signedIn;

    MilestonesPage(MilestoneLook look, WorksDay day, SignedIn signedIn) {
        this.look = look;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance milestones(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> phase,
            @RestQuery Optional<String> milestone,
            @RestQuery Optional<String> from,
            @RestQuery Optional<String> to,
            @RestQuery Optional<Integer> page) {
        AskedMilestones asked = AskedMilestones.of(search, phase, milestone, from, to, day.zone());
        int number = Math.max(1, page.orElse(1));
        return MilestonePages.milestones(new MilestonesView(
                asked.form(),
                asked.filtered(),
                "/milestones/file.csv" + asked.query(),
                look.of(
                        asked.orders()
                                .find()
                                .page(number - 1, MilestonesView.LEAF_ROWS)
                                .list(),
                        signedIn.now().at()),
                new Leaf(
                        number, MilestonesView.LEAF_ROWS, asked.orders().find().count(), "/milestones" + asked.query()),
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.administrator)));
    }

    @GET
    @Path("file.csv")
    @Produces("text/csv")
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> phase,
            @RestQuery Optional<String> milestone,
            @RestQuery Optional<String> from,
            @RestQuery Optional<String> to) {
        AskedMilestones asked = AskedMilestones.of(search, phase, milestone, from, to, day.zone());
        return Csv.file(
                "milestones",
                Arrays.asList(Words.of("line.milestonesCsv").split(";")),
                look.of(asked.orders().find().list(), signedIn.now().at()).stream()
                        .flatMap(way -> way.passings().stream().map(passing -> MilestonesView.cells(way, passing)))
                        .toList());
    }
}
