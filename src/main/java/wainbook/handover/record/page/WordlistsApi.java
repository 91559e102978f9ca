package wainbook.handover.record.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordSaying.Wordlist;
import wainbook.handover.record.Wordlists;
import wainbook.handover.record.act.Wording;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** The lists of what is given with a vehicle and what people are instructed in, for scripts. */
@Path("/api/v1/handover-lists")
public class WordlistsApi {

    /** A list, worded anew. */
    public record Worded(UUID id, Wordlist wordlist, List<String> words) {}

    private final RecordLook look;
    private final Wording wording;
    private final SignedIn signedIn;

    WordlistsApi(RecordLook look, Wording wording, SignedIn signedIn) {
        this.look = look;
        this.wording = wording;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Wordlists lists() {
        return look.wordlists();
    }

    @POST
    @RolesAllowed(Role.worksEngineer)
    public Response word(Worded asked) {
        return Receipt.of(
                wording.word(new Wording.ToWord(asked.id(), asked.wordlist(), asked.words()), signedIn.actor()));
    }
}
