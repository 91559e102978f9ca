package wainbook.handover.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.handover.record.RecordSaying.Part;
import wainbook.handover.record.RecordSaying.ReceiptMissing;
import wainbook.handover.record.RecordSaying.ReceiptSigned;
import wainbook.ledger.Entry;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * A receipt that was signed, or why there is none. Either stands for exactly what was shown.
 *
 * @param fingerprint of what was shown
 */
public record Receipt(
        int number,
        String fingerprint,
        List<Part> parts,
        Optional<ReceiptSigned> signed,
        Optional<ReceiptMissing> missing,
        Entry entry) {

    public Receipt {
        parts = List.copyOf(parts);
    }

    static Receipt of(ReceiptSigned said, Entry entry) {
        return new Receipt(
                said.receipt(), said.shown().sha256(), said.parts(), Optional.of(said), Optional.empty(), entry);
    }

    static Receipt of(ReceiptMissing said, Entry entry) {
        return new Receipt(
                said.receipt(), said.shown().sha256(), said.parts(), Optional.empty(), Optional.of(said), entry);
    }

    public boolean countsFor(Shown now) {
        return fingerprint.equals(now.fingerprint());
    }

    /** What of it was changed since, in words. */
    public String changed(Shown now) {
        return now.parts().stream()
                .filter(part -> !parts.contains(part))
                .map(part -> Words.of("handover.recordPart." + part.part().name()))
                .collect(Collectors.joining(", "));
    }

    /** As documents and the book tell it: who by token, when, and what it stands for. */
    public String printed(Formats formats) {
        String at = formats.moment(entry.moment().at());
        return signed.map(said -> Words.of(
                        "handover.receiptPrinted",
                        number,
                        said.receiver().token(),
                        said.role(),
                        at,
                        Words.of("handover.recordManner." + said.manner().name()),
                        fingerprint.substring(0, 16)))
                .orElseGet(() -> Words.of(
                        "handover.receiptPrintedMissing",
                        number,
                        Words.of("handover.recordAbsence."
                                + missing.orElseThrow().absence().name()),
                        missing.orElseThrow().reason(),
                        missing.orElseThrow().witness(),
                        at));
    }

    /** Whose it is, by role and number and without a name: what handing over says of the receiver. */
    public String inWords() {
        return signed.map(said -> Words.of("handover.recordReceivedBy", said.role(), number))
                .orElseGet(() -> Words.of(
                        "handover.recordNotReceived."
                                + missing.orElseThrow().absence().name(),
                        number));
    }
}
