package wainbook.handover.record.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.Receipt;
import wainbook.handover.record.RecordRules;
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

    public String number() {
        return rules.order().number();
    }

    public String path() {
        return rules.path();
    }

    public HandoverRecord record() {
        return rules.record();
    }

    public RecordStage state() {
        Optional<Receipt> counting = rules.counting();
        boolean signed = counting.flatMap(Receipt::signed).isPresent();
        if (rules.handedOver()) {
            return signed ? RecordStage.GIVEN : RecordStage.GIVEN_UNSIGNED;
        }
        if (!rules.missing().isEmpty()) {
            return RecordStage.OPEN;
        }
        if (counting.isPresent()) {
            return signed ? RecordStage.RECEIPTED : RecordStage.UNSIGNED;
        }
        return record().lastReceipt().isPresent() ? RecordStage.STALE : RecordStage.READY;
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

    public String operator() {
        return rules.order().ordered().operator();
    }

    public RecordForms forms() {
        return new RecordForms(record(), lists, filled);
    }
}
