package wainbook.handover.document;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.Standing;
import wainbook.handover.document.Document.Noted;
import wainbook.handover.requirement.Requirements;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.VehicleFacts;

/**
 * All documents of one vehicle, needed or not, in the order of the rules.
 *
 * @param handover the day it is judged for: the day of handover, or the present one before
 */
public record DocumentSet(String set, int revision, LocalDate handover, List<Document> documents) {

    public DocumentSet {
        documents = List.copyOf(documents);
    }

    public static DocumentSet of(Requirements rules, History history, WorkOrder order, LocalDate handover) {
        Map<String, Noted> notes = new HashMap<>();
        history.saying(DocumentNoted.class).forEach(entry -> {
            Noted noted = noted(entry);
            notes.put(noted.said().requirement(), noted);
        });
        return new DocumentSet(
                rules.rules().set(),
                rules.rules().revision(),
                handover,
                rules.on(handover, VehicleFacts.typed(order.facts())).stream()
                        .map(requirement -> Document.of(
                                requirement,
                                Optional.ofNullable(notes.get(requirement.rule().id())),
                                handover))
                        .toList());
    }

    public Optional<Document> document(String id) {
        return documents.stream().filter(document -> document.id().equals(id)).findFirst();
    }

    /** What keeps the vehicle from being handed over. */
    public List<Document> barring() {
        return documents.stream().filter(Document::bars).toList();
    }

    /** What somebody has to do something about, though it does not keep the vehicle here. */
    public List<Document> asking() {
        return documents.stream()
                .filter(document -> document.standing().isOpen() && !document.bars())
                .toList();
    }

    /** Of these, what has its day after handover. */
    public List<Document> following() {
        return asking().stream()
                .filter(document -> document.followsBy().isPresent())
                .toList();
    }

    /** What is in hand, in date, or waived. */
    public List<Document> settled() {
        return documents.stream()
                .filter(document -> !document.standing().isOpen() && document.standing() != Standing.NOT_NEEDED)
                .toList();
    }

    public List<Document> notNeeded() {
        return standing(Standing.NOT_NEEDED);
    }

    public List<Document> standing(Standing standing) {
        return documents.stream()
                .filter(document -> document.standing() == standing)
                .toList();
    }

    /** What is in hand and ends before the vehicle may leave. */
    public List<Document> endingBefore(LocalDate day) {
        return documents.stream().filter(document -> document.endsBefore(day)).toList();
    }

    public long overdueOn(LocalDate day) {
        return documents.stream().filter(document -> document.overdueOn(day)).count();
    }

    /** Facts that nobody stated yet and some rule asks for, those of barring documents first. */
    public List<String> missingFacts() {
        return Stream.concat(barring().stream(), asking().stream())
                .filter(Document::waitsForFacts)
                .flatMap(document -> document.requirement().missingFacts().stream())
                .distinct()
                .toList();
    }

    private static Noted noted(Entry entry) {
        return new Noted(
                (DocumentNoted) entry.saying(),
                entry.moment().who(),
                entry.moment().at(),
                entry.number());
    }
}
