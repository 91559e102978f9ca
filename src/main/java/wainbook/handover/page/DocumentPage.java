package wainbook.handover.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.handover.FromEarlier;
import wainbook.handover.FromWaste;
import wainbook.handover.HandoverLook;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Noting;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentLine;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** The form by which one document is noted. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
public class DocumentPage {

    private static final String DOCUMENT = "documents/{requirement}";

    private static final Set<String> FILE_TYPES = Set.of("image/jpeg", "image/png", "image/webp", "application/pdf");

    private final Ledger ledger;
    private final HandoverLook look;
    private final Noting noting;
    private final EvidenceFiles files;
    private final FromWaste waste;
    private final FromEarlier earlier;
    private final SignedIn signedIn;

    DocumentPage(
            Ledger ledger,
            HandoverLook look,
            Noting noting,
            EvidenceFiles files,
            FromWaste waste,
            FromEarlier earlier,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.noting = noting;
        this.files = files;
        this.waste = waste;
        this.earlier = earlier;
        this.signedIn = signedIn;
    }

    @GET
    @Path(DOCUMENT)
    public TemplateInstance form(String order, String requirement, @RestQuery Optional<String> from) {
        History history = ledger.history(Numbers.subject(order));
        Optional<Filled> filled = switch (from.orElse("")) {
            case "waste" -> waste.of(history, requirement).map(DocumentPage::filled);
            case "earlier" -> earlier.of(history, requirement).map(DocumentPage::filled);
            default -> Optional.empty();
        };
        return draw(filled.orElseGet(Filled::fresh), order, requirement);
    }

    private static Filled filled(FromWaste.Answer answer) {
        return Filled.fresh()
                .with("state", answer.state().name())
                .with("reference", answer.reference())
                .with("note", answer.sentence());
    }

    private static Filled filled(FromEarlier.Former former) {
        DocumentNoted noted = former.noted();
        return Filled.fresh()
                .with("state", noted.state().name())
                .with("reference", noted.reference())
                .with("validUntil", noted.validUntil().map(LocalDate::toString).orElse(""))
                .with("sha256", noted.file().map(EvidenceFile::sha256).orElse(""))
                .with("note", Words.of("handover.asUnder", former.order()));
    }

    @POST
    @Path(DOCUMENT)
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    public Response note(
            String order,
            String requirement,
            @RestForm String id,
            @RestForm String state,
            @RestForm String reference,
            @RestForm String validUntil,
            @RestForm String note,
            @RestForm String sha256,
            @RestForm("file") FileUpload file) {
        Filled filled = kept(
                Filled.sent(id)
                        .with("state", state)
                        .with("reference", reference)
                        .with("validUntil", validUntil)
                        .with("note", note)
                        .with("sha256", sha256),
                file);
        Optional<State> chosen = state(filled.value("state"));
        Filled checked = chosen.isEmpty() ? filled.wrong("state", "handover.stateMissing") : filled;
        checked = day(filled.value("validUntil")).isEmpty() ? checked.wrong("validUntil", "handover.noDay") : checked;
        if (!checked.right()) {
            return checked.again(again -> draw(again, order, requirement));
        }
        var asked = new Noting.ToNote(
                filled.id(),
                order,
                requirement,
                chosen.orElseThrow(),
                filled.value("reference"),
                day(filled.value("validUntil")).orElseThrow(),
                Optional.of(filled.value("sha256")).filter(text -> !text.isEmpty()),
                filled.value("note"));
        return filled.answer(
                noting.note(asked, signedIn.actor()),
                "/handover/" + order + "?noted=" + requirement,
                again -> draw(again, order, requirement));
    }

    private TemplateInstance draw(Filled filled, String order, String requirement) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        Document document = look.documents(history, known, signedIn.now().at())
                .flatMap(set -> set.document(requirement))
                .orElseThrow(NotFoundException::new);
        var line =
                new DocumentLine(order, document, look.today(signedIn.now().at()), known.phase() == Phase.HANDED_OVER);
        return HandoverPages.document(
                filled,
                new DocumentForm(
                        line,
                        signedIn.is(Role.handoverClerk),
                        signedIn.is(Role.lineManager) || signedIn.is(Role.qualityEngineer),
                        waste.of(history, requirement),
                        earlier.of(history, requirement)));
    }

    /** Keeps the file even where the form comes back, so that nobody chooses it twice. */
    private Filled kept(Filled filled, FileUpload file) {
        if (file == null || file.size() == 0) {
            return filled;
        }
        if (!FILE_TYPES.contains(file.contentType())) {
            return filled.wrong("file", "handover.fileType");
        }
        try {
            byte[] content = Files.readAllBytes(file.uploadedFile());
            return filled.with("sha256", files.keep(content, file.contentType()).sha256());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<State> state(String word) {
        return Arrays.stream(State.values())
                .filter(state -> state.name().equals(word))
                .findFirst();
    }

    /** Empty when it is no day; an empty field is no day and no fault. */
    private static Optional<Optional<LocalDate>> day(String text) {
        try {
            return Optional.of(
                    Optional.of(text).filter(typed -> !typed.isEmpty()).map(LocalDate::parse));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}
