package wainbook.page.ledger;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/**
 * A file that an entry points to, for whoever is signed in: an inspector signs over photographs and has to see them. It is
 * what was handed in, so the browser may show it and must run nothing in it.
 */
@Path("/evidence/{sha256}")
@Authenticated
public class EvidencePage {

    private final EvidenceFiles files;

    EvidencePage(EvidenceFiles files) {
        this.files = files;
    }

    @GET
    public Response file(String sha256) {
        EvidenceFile file = files.file(sha256).orElseThrow(NotFoundException::new);
        return Response.ok(files.bytes(sha256).orElseThrow(NotFoundException::new))
                .type(file.mediaType())
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .build();
    }
}
