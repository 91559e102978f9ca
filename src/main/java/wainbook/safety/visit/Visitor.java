package wainbook.safety.visit;

import java.time.LocalDate;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.safety.SafetySaying.VisitorInducted;

/**
 * A visitor as the ledger knows them: a number, and until when their induction is valid.
 *
 * @param knownBy the entry by which their name is found outside the ledger
 * @param inducted the newest induction
 */
public record Visitor(String number, UUID knownBy, Entry inducted) {

    public LocalDate validTo() {
        return ((VisitorInducted) inducted.saying()).validTo();
    }

    public boolean validOn(LocalDate day) {
        return !day.isAfter(validTo());
    }

    Visitor inductedBy(Entry entry) {
        return new Visitor(number, knownBy, entry);
    }
}
