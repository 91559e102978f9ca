package wainbook.page.ledger;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.ledger.Subject;
import wainbook.ledger.stream.StoredStream;
import wainbook.ledger.stream.StoredStreams;
import wainbook.page.Words;
import wainbook.page.api.Problem;

/** One stream as it is stored: as JSON with its end, or as the bare lines, each of which can be hashed by hand. */
@Path("/api/v1/ledger/streams/{sort}/{code}")
@RolesAllowed({Checkers.AUDITOR, Checkers.QUALITY_ENGINEER, Checkers.ADMINISTRATOR})
public class StreamApi {

    static final String LINES = "application/x-ndjson";

    /** The end of a stream, and its hashed texts as strings. */
    public record Streamed(String subject, long number, String hash, Instant at, List<String> lines) {
        static Streamed of(StoredStream stream) {
            return new Streamed(
                    stream.subject().toString(), stream.number(), stream.hash(), stream.at(), stream.lines());
        }
    }

    private final StoredStreams streams;

    StreamApi(StoredStreams streams) {
        this.streams = streams;
    }

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    public Streamed stream(String sort, String code) {
        return Streamed.of(stored(sort + "/" + code));
    }

    @GET
    @Path("lines")
    @Produces(LINES)
    public String lines(String sort, String code) {
        return stored(sort + "/" + code).lines().stream().collect(Collectors.joining("\n", "", "\n"));
    }

    private StoredStream stored(String written) {
        return subject(written).flatMap(streams::of).orElseThrow(() -> missing(written));
    }

    private static Optional<Subject> subject(String written) {
        try {
            return Optional.of(Subject.parse(written));
        } catch (IllegalArgumentException noSubject) {
            return Optional.empty();
        }
    }

    private static NotFoundException missing(String written) {
        return new NotFoundException(Problem.of(404, "ledger.noStream", Words.of("ledger.noStreamDetail", written))
                .response());
    }
}
