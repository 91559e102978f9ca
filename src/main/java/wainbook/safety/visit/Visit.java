package wainbook.safety.visit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.safety.SafetySaying.VisitorEntered;

/**
 * One visit as its entries leave it.
 *
 * @param hosted the newest word of somebody that they are the host: the entering itself, or a take-over
 */
public record Visit(Entry entered, Entry hosted, Optional<Entry> left) {

    static Visit of(Entry entered) {
        return new Visit(entered, entered, Optional.empty());
    }

    public VisitorEntered said() {
        return (VisitorEntered) entered.saying();
    }

    public int number() {
        return said().visit();
    }

    public String visitor() {
        return said().visitor();
    }

    public String host() {
        return hosted.moment().who();
    }

    /** Since when the present host has them. */
    public Instant hostedAt() {
        return hosted.moment().at();
    }

    public boolean inside() {
        return left.isEmpty();
    }

    public LocalDate inductedTo() {
        return said().inductedTo();
    }

    Visit hostedBy(Entry entry) {
        return new Visit(entered, entry, left);
    }

    /** The first word that they are out stands. */
    Visit leftBy(Entry entry) {
        return new Visit(entered, hosted, left.or(() -> Optional.of(entry)));
    }
}
