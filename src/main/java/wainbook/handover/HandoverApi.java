package wainbook.handover;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.document.Difference;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.requirement.RuleSource;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Documents and handing over for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
public class HandoverApi {

    /**
     * A vehicle's set; {@code seen} is what handing over must carry, {@code against} what stands against it by the vehicle's own
     * set, whatever set was asked for. Where another was, {@code difference} says what it changes.
     */
    public record Known(
            long seen,
            WorkOrder.Phase phase,
            Optional<String> set,
            Optional<Integer> revision,
            Optional<LocalDate> on,
            List<Line> documents,
            Optional<Compared> difference,
            List<Problem.Ground> against) {}

    /** What another set changes, by the ids of its documents. */
    public record Compared(
            String ownSet, List<String> inAddition, List<String> becomesQuestion, List<String> fallsAway) {

        static Compared of(DocumentSet own, DocumentSet other) {
            var difference = Difference.between(own, other);
            return new Compared(
                    own.set(),
                    ids(difference.inAddition()),
                    ids(difference.becomesQuestion()),
                    ids(difference.fallsAway()));
        }

        private static List<String> ids(List<Difference.Change> changes) {
            return changes.stream().map(change -> change.document().id()).toList();
        }
    }

    /** One document. */
    public record Line(
            String id,
            String document,
            String answer,
            Standing standing,
            boolean bars,
            String because,
            RuleSource source,
            String due,
            String duty,
            String issuer,
            String evidence,
            int documents,
            List<String> missingFacts,
            Optional<LocalDate> followsBy,
            Optional<Document.Noted> noted) {

        static Line of(Document document) {
            var requirement = document.requirement();
            Reason because = requirement.because();
            return new Line(
                    document.id(),
                    document.rule().document(),
                    requirement.answer().word(),
                    document.standing(),
                    document.bars(),
                    Words.of(because.key(), because.arguments().toArray()),
                    document.rule().source(),
                    document.rule().due().word(),
                    document.rule().duty().word(),
                    document.rule().issuer(),
                    document.rule().evidence(),
                    requirement.documents(),
                    requirement.missingFacts(),
                    document.followsBy(),
                    document.noted());
        }
    }

    /** How far a document has come; {@code sha256} names a file handed in before. */
    public record Note(
            UUID id,
            State state,
            Optional<String> reference,
            Optional<LocalDate> validUntil,
            Optional<String> sha256,
            Optional<String> note) {}

    /** A vehicle given over. */
    public record Given(UUID id, String receivedBy, Optional<Long> seen) {}

    private final Ledger ledger;
    private final HandoverLook look;
    private final Noting noting;
    private final HandingOver handingOver;
    private final SignedIn signedIn;

    HandoverApi(Ledger ledger, HandoverLook look, Noting noting, HandingOver handingOver, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.noting = noting;
        this.handingOver = handingOver;
        this.signedIn = signedIn;
    }

    @GET
    @Path("documents")
    @Authenticated
    public Known documents(String order, @RestQuery Optional<String> set) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        HandoverRules rules = look.rules(history, known, signedIn.now());
        Optional<DocumentSet> other = set.map(name -> under(name, history, known));
        Optional<DocumentSet> shown = other.or(rules::documents);
        return new Known(
                history.number(),
                known.phase(),
                shown.map(DocumentSet::set),
                shown.map(DocumentSet::revision),
                shown.map(DocumentSet::handover),
                shown.stream()
                        .flatMap(found -> found.documents().stream())
                        .map(Line::of)
                        .toList(),
                rules.documents().flatMap(own -> other.map(asked -> Compared.of(own, asked))),
                rules.against().stream().map(Problem.Ground::of).toList());
    }

    private DocumentSet under(String set, History history, WorkOrder order) {
        return look.under(set, history, order, signedIn.now().at())
                .orElseThrow(() -> new WebApplicationException(
                        Problem.of(List.of(HandoverLook.unknown(set))).response()));
    }

    @POST
    @Path("documents/{requirement}")
    @RolesAllowed({Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
    public Response note(String order, String requirement, Note body) {
        return Receipt.of(noting.note(
                new Noting.ToNote(
                        body.id,
                        order,
                        requirement,
                        body.state,
                        body.reference.orElse(""),
                        body.validUntil,
                        body.sha256,
                        body.note.orElse("")),
                signedIn.actor()));
    }

    @POST
    @Path("handover")
    @RolesAllowed(Role.handoverClerk)
    public Response handOver(String order, Given body) {
        return Receipt.of(handingOver.handOver(
                new HandingOver.ToHandOver(body.id, order, body.receivedBy, body.seen), signedIn.actor()));
    }
}
