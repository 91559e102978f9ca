package wainbook.handover.issue;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.HandoverLook;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Standing;
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
import wainbook.station.StationSaying.Held;
import wainbook.works.shift.WorksDay;
import wainbook.works.signin.Passwords;

/** Issues a document from the record, signed, and notes it as in hand where a rule asks for it. */
@ApplicationScoped
public class Issuing {

    /** @param seen the number of the stream when the signer read the document */
    public record ToIssue(UUID id, String order, String document, String password, Optional<Long> seen)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Issued.class;
        }
    }

    private final Ledger ledger;
    private final IssueLook look;
    private final HandoverLook handover;
    private final EvidenceFiles files;
    private final Passwords passwords;
    private final WorksDay day;

    Issuing(
            Ledger ledger,
            IssueLook look,
            HandoverLook handover,
            EvidenceFiles files,
            Passwords passwords,
            WorksDay day) {
        this.ledger = ledger;
        this.look = look;
        this.handover = handover;
        this.files = files;
        this.passwords = passwords;
        this.day = day;
    }

    public Outcome<Entry> issue(ToIssue asked, Actor actor) {
        Optional<Reason> unsigned = passwords.against(actor.who(), asked.password());
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToIssue asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        Optional<IssueRules> rules = look.one(reading.of(subject), asked.document(), reading.moment());
        if (rules.isEmpty()) {
            return Decision.refuse(
                    Reason.of("handover.nothingToIssue", Reason.WORKS_RULE, asked.document(), asked.order()));
        }
        List<Reason> against = rules.get().against();
        return against.isEmpty()
                ? look.shown(rules.get()).fold(text -> issued(rules.get(), text, reading), Decision::refuse)
                : Decision.refuse(against);
    }

    private Decision issued(IssueRules rules, String text, Reading reading) {
        Subject subject = Subject.workOrder(rules.order());
        Template template = rules.template();
        int issue = Issues.of(reading.of(subject), template.code()).count() + 1;
        Held held = rules.signer()
                .competence(IssueRules.COMPETENCE)
                .map(known -> new Held(known.code(), known.level(), known.validTo()))
                .orElseThrow();
        var sheet = new Sheet(
                rules,
                issue,
                text,
                rules.signer().number(),
                held,
                reading.moment().at(),
                new Formats(day.zone()));
        EvidenceFile file = files.keep(sheet.pdf(), "application/pdf");
        Decision said = Decision.say(
                subject, new Issued(template.code(), template.title(), issue, template.revision(), file, held));
        WorkOrder order = WorkOrder.of(reading.of(subject)).orElseThrow();
        for (DocumentSet set : handover
                .documents(reading.of(subject), order, reading.moment().at())
                .stream()
                .toList()) {
            for (Document document : asking(set, template)) {
                said = said.andSay(subject, noted(set, document, sheet.number(), file));
            }
        }
        return said;
    }

    /** Documents of the set that this is, needed or asked about. */
    private static List<Document> asking(DocumentSet set, Template template) {
        return set.documents().stream()
                .filter(document -> template.answers().contains(document.id()))
                .filter(document -> document.standing() != Standing.NOT_NEEDED)
                .toList();
    }

    private static DocumentNoted noted(DocumentSet set, Document document, String number, EvidenceFile file) {
        return new DocumentNoted(
                document.id(),
                document.rule().document(),
                set.set(),
                set.revision(),
                State.IN_HAND,
                number,
                Optional.empty(),
                Optional.of(file),
                "");
    }
}
