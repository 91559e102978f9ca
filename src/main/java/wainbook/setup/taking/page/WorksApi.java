package wainbook.setup.taking.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Problem.Ground;
import wainbook.page.api.Receipt;
import wainbook.process.VehicleFacts;
import wainbook.setup.files.Change;
import wainbook.setup.files.Fault;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksText;
import wainbook.setup.files.WorksZip;
import wainbook.setup.taking.Asker;
import wainbook.setup.taking.Preview;
import wainbook.setup.taking.Taking;
import wainbook.setup.taking.ToTake;
import wainbook.works.Role;

/** The files of the works for scripts, packed as one file. */
@Path("/api/v1/works")
@RolesAllowed({Role.administrator, Role.worksEngineer})
public class WorksApi {

    /** Who confirms a change of the process, as HTTP Basic writes user name and password. */
    static final String SECOND = "Wainbook-Second";

    private static final String ZIP = "application/zip";

    /** A fault as a script reads it. */
    public record FaultAt(String file, String line, String column, String found, String expected, String text) {
        static FaultAt of(Fault fault) {
            return new FaultAt(
                    fault.place().file(), fault.line(), fault.column(), fault.found(), fault.expected(), fault.text());
        }
    }

    /**
     * What was found.
     *
     * @param fingerprint of the changes; carried by the taking, it holds that taking to them
     */
    public record Checked(
            List<FaultAt> faults,
            List<Change> changes,
            List<Ground> reasons,
            boolean needsSecond,
            Optional<String> fingerprint) {}

    private final Taking taking;
    private final SignedIn signedIn;

    WorksApi(Taking taking, SignedIn signedIn) {
        this.taking = taking;
        this.signedIn = signedIn;
    }

    @GET
    @Produces(ZIP)
    public byte[] giveOut() {
        return WorksZip.pack(WorksText.of(taking.givenOut()));
    }

    @POST
    @Path("check")
    @Consumes(ZIP)
    @Produces(MediaType.APPLICATION_JSON)
    public Checked check(byte[] packed) {
        return WorksZip.read(packed, VehicleFacts.PREDICATES).fold(this::whole, WorksApi::faulty);
    }

    /** Takes them; {@code id} makes it safe to send again, {@code fingerprint} holds it to what was checked. */
    @POST
    @Path("take")
    @Consumes(ZIP)
    @Produces(MediaType.APPLICATION_JSON)
    public Response take(
            byte[] packed,
            @RestQuery Optional<UUID> id,
            @RestQuery Optional<String> fingerprint,
            @HeaderParam(SECOND) String second) {
        return WorksZip.read(packed, VehicleFacts.PREDICATES)
                .fold(
                        files -> Receipt.of(taking.take(
                                new ToTake(
                                        id.orElseGet(UUID::randomUUID),
                                        files,
                                        fingerprint.orElseGet(() ->
                                                taking.preview(files, asker()).fingerprint()),
                                        confirming(second)),
                                asker())),
                        faults -> Response.status(422).entity(faulty(faults)).build());
    }

    private Checked whole(WorksFiles files) {
        Preview preview = taking.preview(files, asker());
        return new Checked(
                List.of(),
                preview.differences().changes(),
                preview.reasons().stream().map(Ground::of).toList(),
                preview.needsSecond(),
                Optional.of(preview.fingerprint()));
    }

    private static Checked faulty(List<Fault> faults) {
        return new Checked(faults.stream().map(FaultAt::of).toList(), List.of(), List.of(), false, Optional.empty());
    }

    private static Optional<ToTake.Second> confirming(String header) {
        if (header == null) {
            return Optional.empty();
        }
        try {
            byte[] both = Base64.getDecoder().decode(header.replaceFirst("(?i)^Basic +", ""));
            String[] parts = new String(both, StandardCharsets.UTF_8).split(":", 2);
            return parts.length == 2 ? Optional.of(new ToTake.Second(parts[0], parts[1])) : Optional.empty();
        } catch (IllegalArgumentException noBase64) {
            throw new WebApplicationException(
                    Problem.of(400, "page.problemBody", SECOND).response());
        }
    }

    private Asker asker() {
        return new Asker(signedIn.actor(), signedIn.is(Role.administrator));
    }
}
