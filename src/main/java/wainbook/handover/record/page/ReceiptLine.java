package wainbook.handover.record.page;

import java.util.UUID;
import wainbook.handover.record.OutsideName;
import wainbook.handover.record.Receipt;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordRules;
import wainbook.page.Words;

/** A receipt with the name of whoever signed, where it is still kept. */
public record ReceiptLine(Receipt receipt, String name, String firm, boolean counts, String changed) {

    static ReceiptLine of(Receipt receipt, RecordRules rules) {
        UUID entry = receipt.entry().id();
        return new ReceiptLine(
                receipt,
                receipt.signed()
                        .map(said -> RecordLook.called(said.receiver().token(), entry, 0))
                        .orElse(""),
                OutsideName.of(entry, 0).map(row -> row.firm).orElse(""),
                rules.counting().filter(receipt::equals).isPresent(),
                rules.handedOver() ? "" : receipt.changed(rules.shown()));
    }

    public String absence() {
        return receipt.missing()
                .map(said -> Words.of("handover.recordAbsence." + said.absence().name()))
                .orElse("");
    }
}
