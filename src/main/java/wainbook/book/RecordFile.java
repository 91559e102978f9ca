package wainbook.book;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.stream.Collectors;
import wainbook.ledger.stream.StoredStreams;
import wainbook.order.Numbers;
import wainbook.works.Role;

/** The record of one vehicle as it is stored, line by line, to be verified elsewhere. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/record.ndjson")
public class RecordFile {

    private final StoredStreams streams;

    RecordFile(StoredStreams streams) {
        this.streams = streams;
    }

    @GET
    @Produces("application/x-ndjson")
    @RolesAllowed({Role.auditor, Role.qualityEngineer, Role.administrator})
    public Response lines(String order) {
        String lines = streams.of(Numbers.subject(order)).orElseThrow(NotFoundException::new).lines().stream()
                .collect(Collectors.joining("\n", "", "\n"));
        return Response.ok(lines)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + order + ".ndjson\"")
                .build();
    }
}
