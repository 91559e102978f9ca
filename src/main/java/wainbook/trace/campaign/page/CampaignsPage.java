package wainbook.trace.campaign.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Words;

/** All campaigns. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class CampaignsPage {

    private final CampaignLook look;
    private final Doorkeeper doorkeeper;

    CampaignsPage(CampaignLook look, Doorkeeper doorkeeper) {
        this.look = look;
        this.doorkeeper = doorkeeper;
    }

    @GET
    @Path("campaigns")
    @Authenticated
    public TemplateInstance all(@RestQuery Optional<String> search, @RestQuery Optional<String> which) {
        return CampaignPages.campaigns(list(search, which));
    }

    @GET
    @Path("campaigns.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> which) {
        return Csv.file(
                "campaigns",
                Arrays.asList(Words.of("campaign.csvHeader").split(";")),
                list(search, which).shown().stream().map(CampaignLine::cells).toList());
    }

    private CampaignList list(Optional<String> search, Optional<String> which) {
        return new CampaignList(
                look.all(),
                search.map(String::strip).orElse(""),
                which.orElse(""),
                doorkeeper.doors().leads());
    }

    static List<String> header(String key) {
        return Arrays.asList(Words.of(key).split(";"));
    }
}
