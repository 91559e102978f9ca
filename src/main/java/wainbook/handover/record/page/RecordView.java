package wainbook.handover.record.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import wainbook.act.Reason;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.Receipt;
import wainbook.handover.record.RecordRules;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.Shown;
import wainbook.handover.record.Wordlists;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * A handover record as its pages show it.
 *
 * @param people of the works, to choose from
 * @param usualKm what the odometer showed last
 */
public record RecordView(
        RecordRules rules,
        Optional<DocumentSet> documents,
        Wordlists lists,
        List<Option> people,
        int usualKm,
        LocalDate today,
        Doors doors,
        Filled filled) {

    /** Which acts the reader's roles allow. */
    public record Doors(boolean keep, boolean receipt, boolean word) {}

    /** Where it stands. */
    public enum Stage {
        GIVEN("recordGiven", "done", "safe"),
        GIVEN_UNSIGNED("recordGivenUnsigned", "alert", "warn"),
        OPEN("recordOpen", "clock", "must"),
        READY("recordReady", "signature", "must"),
        STALE("recordStale", "alert", "danger"),
        UNSIGNED("recordUnsigned", "alert", "warn"),
        RECEIPTED("recordReceipted", "done", "safe");

        private final String key;
        private final String sign;
        private final String meaning;

        Stage(String key, String sign, String meaning) {
            this.key = key;
            this.sign = sign;
            this.meaning = meaning;
        }

        public String sign() {
            return sign;
        }

        public String meaning() {
            return meaning;
        }

        public String word() {
            return Words.of("handover." + key);
        }
    }

    public String number() {
        return rules.order().number();
    }

    public String path() {
        return rules.path();
    }

    public HandoverRecord record() {
        return rules.record();
    }

    public Stage state() {
        Optional<Receipt> counting = rules.counting();
        boolean signed = counting.flatMap(Receipt::signed).isPresent();
        if (rules.handedOver()) {
            return signed ? Stage.GIVEN : Stage.GIVEN_UNSIGNED;
        }
        if (!rules.missing().isEmpty()) {
            return Stage.OPEN;
        }
        if (counting.isPresent()) {
            return signed ? Stage.RECEIPTED : Stage.UNSIGNED;
        }
        return record().lastReceipt().isPresent() ? Stage.STALE : Stage.READY;
    }

    public String title() {
        return Words.of("handover.recordTitle", number(), state().word());
    }

    public String receiptTitle() {
        return Words.of("handover.receiptTitle", number(), state().word());
    }

    public List<Reason> against() {
        return rules.handedOver() ? List.of() : rules.against();
    }

    public List<Reason> againstReceipt() {
        return rules.againstReceipt();
    }

    /** Whether its forms are drawn. */
    public boolean open() {
        return doors.keep() && rules.closed().isEmpty();
    }

    public boolean closes() {
        return doors.keep();
    }

    public String fingerprint() {
        return rules.shown().fingerprint();
    }

    /** The id of a form of the page: that of the one that came back, a fresh one for all others. */
    public UUID id(String form) {
        return filled.value("form").equals(form) ? filled.id() : UUID.randomUUID();
    }

    /** What is given with the vehicle as the form asks: the works' own list, and what was written besides. */
    public List<Row> thingRows() {
        List<Thing> listed =
                record().things().map(Piece::said).map(said -> said.things()).orElse(List.of());
        var names = new ArrayList<>(lists.things());
        listed.stream().map(Thing::thing).filter(name -> !names.contains(name)).forEach(names::add);
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Row(
                        i,
                        names.get(i),
                        listed.stream()
                                .filter(thing -> thing.thing().equals(names.get(i)))
                                .findFirst()
                                .map(thing -> String.valueOf(thing.count()))
                                .orElse("")))
                .toList();
    }

    /** Whether a form is drawn open: what it asks for is missing, or it came back. */
    public boolean opens(String form) {
        return filled.value("form").equals(form)
                || switch (form) {
                    case "state" -> record().state().isEmpty();
                    case "things" -> record().things().isEmpty();
                    case "warranty" -> record().warranty().isEmpty();
                    default -> false;
                };
    }

    public List<Integer> freeLines() {
        return List.of(0, 1, 2);
    }

    public String free(int line) {
        return filled.value("free" + line);
    }

    public String freeCount(int line) {
        return filled.value("freeCount" + line);
    }

    /** The field that a fault of closing this snag is shown at. */
    public String doneField(SnagLine snag) {
        return opens(snag.form()) ? "done" : "done-" + snag.said().snag();
    }

    public String day(LocalDate day) {
        return Formats.date(day);
    }

    /** What a receiver is shown after the vehicle itself. */
    public List<String> shownParts() {
        return Arrays.stream(Shown.Part.values())
                .filter(part -> part != Shown.Part.VEHICLE)
                .map(Shown.Part::name)
                .toList();
    }

    public String partTitle(String part) {
        return Words.of("handover.recordPart." + part);
    }

    public boolean withdrawable() {
        return !record().pictures().isEmpty()
                || !record().openSnags().isEmpty()
                || !record().instructions().isEmpty();
    }

    public List<Option> sorts() {
        return Arrays.stream(Sort.values())
                .map(sort -> new Option(sort.name(), Words.of("handover.recordSort." + sort.name())))
                .toList();
    }

    /** @param count as it was listed last */
    public record Row(int index, String name, String count) {}

    public String count(Row row) {
        return filled.value("form").equals("things") ? filled.value("count" + row.index()) : row.count();
    }

    public List<Row> topicRows() {
        List<String> topics = lists.topics();
        return IntStream.range(0, topics.size())
                .mapToObj(i -> new Row(i, topics.get(i), ""))
                .toList();
    }

    public boolean ticked(Row row) {
        return filled.value("topic" + row.index()).equals("yes");
    }

    public List<SnagLine> snags() {
        return record().snags().stream().map(piece -> SnagLine.of(piece, today)).toList();
    }

    public List<SnagLine> openSnags() {
        return snags().stream().filter(SnagLine::open).toList();
    }

    public List<InstructionLine> instructions() {
        return record().instructions().stream().map(InstructionLine::of).toList();
    }

    public List<Document> inHand() {
        return documents.stream()
                .flatMap(set -> set.standing(Standing.IN_HAND).stream())
                .toList();
    }

    /** Newest first. */
    public List<ReceiptLine> receipts() {
        var lines = new ArrayList<>(record().receipts().stream()
                .map(receipt -> ReceiptLine.of(receipt, rules))
                .toList());
        Collections.reverse(lines);
        return lines;
    }

    public List<Option> manners() {
        return List.of(
                new Option(Manner.DRAWN.name(), Words.of("handover.recordManner.DRAWN")),
                new Option(Manner.TYPED.name(), Words.of("handover.recordManner.TYPED")));
    }

    public List<Option> absences() {
        return List.of(
                new Option(Absence.REFUSED.name(), Words.of("handover.recordAbsence.REFUSED")),
                new Option(Absence.NOT_PRESENT.name(), Words.of("handover.recordAbsence.NOT_PRESENT")));
    }

    public String operator() {
        return rules.order().ordered().operator();
    }
}
