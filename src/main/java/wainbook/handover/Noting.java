package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.WorkOrder;
import wainbook.page.Formats;
import wainbook.works.Person;
import wainbook.works.Role;

/** Notes how far a document has come. To waive one is not the clerk's to decide. */
@ApplicationScoped
public class Noting {

    /** Who may decide that a vehicle leaves without a document. */
    static final Set<Role> MAY_WAIVE = Set.of(Role.LINE_MANAGER, Role.QUALITY_ENGINEER);

    private static final int LONGEST_REFERENCE = 80;
    private static final int LONGEST_NOTE = 2000;

    /** What is asked; the file was handed in before and is named by its fingerprint. */
    public record ToNote(
            UUID id,
            String order,
            String requirement,
            State state,
            String reference,
            Optional<LocalDate> validUntil,
            Optional<String> sha256,
            String note)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return DocumentNoted.class;
        }
    }

    private final Ledger ledger;
    private final HandoverLook look;
    private final EvidenceFiles files;

    Noting(Ledger ledger, HandoverLook look, EvidenceFiles files) {
        this.ledger = ledger;
        this.look = look;
        this.files = files;
    }

    public Outcome<Entry> note(ToNote asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToNote asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        Optional<WorkOrder> order = WorkOrder.of(reading.of(subject));
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        Optional<DocumentSet> set = look.documents(
                reading.of(subject), order.get(), reading.moment().at());
        Optional<Document> document = set.flatMap(known -> known.document(asked.requirement()));
        if (document.isEmpty()) {
            return Decision.refuse(Reason.of("handover.notInTheSet", Reason.WORKS_RULE, asked.requirement()));
        }
        Person person = Person.of(ledger.history(Subject.person(reading.moment().who())));
        Optional<EvidenceFile> file = asked.sha256().flatMap(files::file);
        List<Reason> against = new ArrayList<>(against(asked, document.get(), person));
        against.addAll(
                written(asked, document.get(), look.today(reading.moment().at())));
        if (asked.sha256().isPresent() && file.isEmpty()) {
            against.add(Reason.of("handover.fileUnknown", Reason.WORKS_RULE).liftedAt("#file"));
        }
        return against.isEmpty()
                ? Decision.say(subject, noted(asked, set.get(), document.get(), file))
                : Decision.refuse(against);
    }

    /** Whether this person may note this of the document, as it stands. */
    static List<Reason> against(ToNote asked, Document document, Person person) {
        boolean waives = asked.state() == State.WAIVED;
        if (waives && person.roles().stream().noneMatch(MAY_WAIVE::contains)) {
            return List.of(Reason.of("handover.mayNotWaive", Reason.WORKS_RULE, document.id()));
        }
        if (!waives && !person.roles().contains(Role.HANDOVER_CLERK)) {
            return List.of(Reason.of("handover.mayNotNote", Reason.WORKS_RULE, document.id()));
        }
        if (waives && document.standing() == Standing.NOT_NEEDED) {
            return List.of(Reason.of("handover.nothingToWaive", Reason.WORKS_RULE, document.id()));
        }
        if (waives && document.waitsForFacts()) {
            String fact = document.requirement().missingFacts().get(0);
            return List.of(Reason.of("handover.factsBeforeWaiving", Reason.WORKS_RULE, document.id())
                    .liftedAt("/orders/" + asked.order() + "/facts?fact=" + fact));
        }
        return List.of();
    }

    /** What is wrong at the fields. */
    private static List<Reason> written(ToNote asked, Document document, LocalDate today) {
        var wrong = new ArrayList<Reason>();
        boolean hasToSayWhy = asked.state() == State.WAIVED || asked.state() == State.REFUSED;
        if (asked.state() == State.IN_HAND && asked.reference().isBlank()) {
            wrong.add(Reason.of("handover.referenceMissing", Reason.WORKS_RULE).liftedAt("#reference"));
        }
        if (asked.reference().length() > LONGEST_REFERENCE) {
            wrong.add(Reason.of("handover.tooLong", Reason.WORKS_RULE, LONGEST_REFERENCE)
                    .liftedAt("#reference"));
        }
        if (asked.state() == State.IN_HAND
                && asked.validUntil().filter(today::isAfter).isPresent()) {
            wrong.add(Reason.of("handover.endedAlready", Reason.WORKS_RULE).liftedAt("#validUntil"));
        }
        document.rule()
                .validUntil(today)
                .filter(last -> validAfter(asked, last))
                .ifPresent(last -> wrong.add(Reason.of(
                                "handover.validTooLong",
                                Reason.WORKS_RULE,
                                document.rule().validMonths().orElseThrow(),
                                Formats.date(last))
                        .liftedAt("#validUntil")));
        if (hasToSayWhy && asked.note().isBlank()) {
            wrong.add(Reason.of("handover.whyMissing", Reason.WORKS_RULE).liftedAt("#note"));
        }
        if (asked.note().length() > LONGEST_NOTE) {
            wrong.add(Reason.of("handover.tooLong", Reason.WORKS_RULE, LONGEST_NOTE)
                    .liftedAt("#note"));
        }
        return wrong;
    }

    /** No document dated today or before is valid for so long. */
    private static boolean validAfter(ToNote asked, LocalDate last) {
        return asked.state() == State.IN_HAND
                && asked.validUntil().filter(last::isBefore).isPresent();
    }

    private static DocumentNoted noted(ToNote asked, DocumentSet set, Document document, Optional<EvidenceFile> file) {
        return new DocumentNoted(
                document.id(),
                document.rule().document(),
                set.set(),
                set.revision(),
                asked.state(),
                asked.reference(),
                asked.validUntil(),
                file,
                asked.note());
    }
}
