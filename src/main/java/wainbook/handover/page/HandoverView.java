package wainbook.handover.page;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.HandoverLook;
import wainbook.handover.HandoverRules;
import wainbook.handover.Leaving;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentLine;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.promise.PromiseKept;
import wainbook.handover.requirement.RuleSet;
import wainbook.ledger.Entry;
import wainbook.order.FactQuestion;
import wainbook.order.OrderList;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.station.StationSaying.HandedOn;

/**
 * The documents of one vehicle, and its handing over, as the page shows them.
 *
 * @param asked the document that was noted just now, by its number
 * @param fromWaste how documents stand by the waste record, by their numbers
 * @param leaving when the vehicle will be ready, where that is forecast
 */
public record HandoverView(
        HandoverRules rules,
        LocalDate today,
        Doors doors,
        Optional<String> asked,
        Map<String, String> fromWaste,
        Optional<Leaving.Days> leaving) {

    /** Which acts the reader's roles allow. */
    public record Doors(boolean note, boolean state, boolean handOver) {}

    /** A heading with the documents under it. */
    public record Group(String anchor, String title, String text, List<DocumentLine> lines) {}

    /** What was given over. */
    public record Given(String receivedBy, Instant at, String who, long entry, List<DocumentLine> documents) {}

    public WorkOrder order() {
        return rules.order();
    }

    public String number() {
        return order().number();
    }

    public long seen() {
        return rules.history().number();
    }

    public List<PromiseKept> promises() {
        return rules.promises();
    }

    public long openPromises() {
        return rules.promises().stream().filter(PromiseKept::open).count();
    }

    public String phase() {
        return OrderList.word(order().phase());
    }

    public boolean handedOver() {
        return order().phase() == Phase.HANDED_OVER;
    }

    public boolean knowsRules() {
        return rules.documents().isPresent();
    }

    public String market() {
        return HandoverLook.market(order());
    }

    public DocumentSet set() {
        return rules.documents().orElseThrow();
    }

    public String basis() {
        return Words.of("handover.basis", set().set(), set().revision(), Formats.date(set().handover()));
    }

    /** Markets whose rules are here besides its own. */
    public List<Option> otherSets() {
        return RuleSet.there().stream()
                .filter(set -> !set.equals(market()))
                .map(set -> new Option(set, AnotherMarket.title(set)))
                .toList();
    }

    /** What goes before the rules of a set that is wider than one state. */
    public Optional<String> localLaw() {
        return localLaw(market());
    }

    static Optional<String> localLaw(String set) {
        return Words.find("handover.localLaw." + set);
    }

    public String csv() {
        return "/handover/" + number() + "/documents.csv";
    }

    public List<Reason> against() {
        return rules.against();
    }

    public List<Reason> vehicleAgainst() {
        return rules.vehicleAgainst();
    }

    public List<Reason> documentsAgainst() {
        return rules.documentsAgainst();
    }

    /** Where it stands, in one sentence. */
    public String sentence() {
        if (handedOver()) {
            return phase();
        }
        return rules.documents()
                .map(known -> Words.of("handover.missingCount", known.barring().size()))
                .orElseGet(() -> Words.of("handover.noRulesShort"));
    }

    public List<FactQuestion> missingFacts() {
        return set().missingFacts().stream()
                .map(fact -> FactQuestion.of(fact, ""))
                .toList();
    }

    /** What was noted just now, in a sentence. */
    public Optional<String> noted() {
        return asked.flatMap(id -> rules.documents().flatMap(known -> known.document(id)))
                .map(this::line)
                .flatMap(line -> line.noted().map(note -> Words.of("handover.notedAs", line.name(), note)));
    }

    /** What somebody has to do something about, what keeps the vehicle here first. */
    public List<Group> open() {
        return List.of(
                new Group(
                        "ending",
                        Words.of("handover.endingTitle", ending().size()),
                        Words.of("handover.endingText"),
                        lines(ending())),
                new Group(
                        "missing",
                        Words.of(
                                handedOver() ? "handover.stillOpen" : "handover.missingTitle",
                                set().barring().size()),
                        Words.of("handover.missingText"),
                        lines(set().barring())),
                new Group(
                        "asked",
                        Words.of("handover.askedTitle", set().asking().size()),
                        Words.of("handover.askedText"),
                        lines(set().asking())));
    }

    /** What is in hand and ends before the vehicle may leave. */
    private List<Document> ending() {
        return leaving.map(days -> set().endingBefore(days.late())).orElse(List.of());
    }

    /** What the operator has to do once the vehicle runs, each in a sentence. */
    public List<String> operatorsChecks() {
        return rules.history()
                .saying(HandedOn.class)
                .map(entry -> (HandedOn) entry.saying())
                .map(said -> Words.of("station.operatorsCheck", said.joint(), said.byKm()))
                .toList();
    }

    /** How a document stands by the waste record; empty where that knows nothing of it. */
    public String waste(DocumentLine line) {
        return fromWaste.getOrDefault(line.document().id(), "");
    }

    public List<DocumentLine> settled() {
        return lines(set().settled());
    }

    public List<DocumentLine> notNeeded() {
        return lines(set().notNeeded());
    }

    /** Empty until it was handed over. */
    public Optional<Given> given() {
        return rules.history().saying(HandedOver.class).findFirst().map(this::given);
    }

    private Given given(Entry entry) {
        HandedOver said = (HandedOver) entry.saying();
        return new Given(
                said.receivedBy(),
                entry.moment().at(),
                entry.moment().who(),
                entry.number(),
                rules.documents().stream()
                        .flatMap(known -> known.documents().stream())
                        .filter(document -> said.requirements().contains(document.id()))
                        .map(this::line)
                        .toList());
    }

    private List<DocumentLine> lines(List<Document> documents) {
        return documents.stream().map(this::line).toList();
    }

    DocumentLine line(Document document) {
        return new DocumentLine(number(), document, today, handedOver());
    }
}
