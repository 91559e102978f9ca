package wainbook.handover.record.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordSaying.Wordlist;
import wainbook.handover.record.Wordlists;
import wainbook.handover.record.act.Wording;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The lists of what is given with a vehicle and what people are instructed in. */
@Path("/process/handover-lists")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class WordlistsPage {

    private final RecordLook look;
    private final Wording wording;
    private final SignedIn signedIn;

    WordlistsPage(RecordLook look, Wording wording, SignedIn signedIn) {
        this.look = look;
        this.wording = wording;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance lists() {
        Wordlists lists = look.wordlists();
        return draw(Filled.fresh()
                .with(Wordlist.THINGS.name(), String.join("\n", lists.things()))
                .with(Wordlist.TOPICS.name(), String.join("\n", lists.topics())));
    }

    @POST
    @RolesAllowed(Role.worksEngineer)
    public Response word(MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        Wordlist list = form.one("wordlist", Wordlist.values());
        var asked = new Wording.ToWord(form.filled().id(), list, Wordlists.lines(form.text(list.name())));
        return form.right()
                ? form.filled().answer(wording.word(asked, signedIn.actor()), "/process/handover-lists", this::draw)
                : form.filled().again(this::draw);
    }

    private TemplateInstance draw(Filled filled) {
        return RecordPages.wordlists(new WordlistsView(look.wordlists(), signedIn.is(Role.worksEngineer), filled));
    }
}
