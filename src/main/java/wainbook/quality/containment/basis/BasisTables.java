package wainbook.quality.containment.basis;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.station.PaperMark;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;

/** In which work orders something rests on what. */
@ApplicationScoped
class BasisTables implements Projection {

    private final Ledger ledger;

    BasisTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        BasisRow.of(asDone(entry)).filter(row -> !leadsHereAlready(entry, row)).ifPresent(row -> row.persist());
    }

    /** A reading from paper rests on whoever made it, and on the tool as it was then. */
    private Entry asDone(Entry entry) {
        return entry.saying() instanceof Result || entry.saying() instanceof OnPaper
                ? PaperMark.asDone(ledger.history(entry.subject()), entry)
                : entry;
    }

    /**
     * A serial is found by the table of serials, so that its entry needs a row only where no earlier one of the vehicle
     * leads to the same sheet and competence: recording it stays as quick as recording anything else.
     */
    private boolean leadsHereAlready(Entry entry, BasisRow row) {
        return entry.saying() instanceof SerialRead
                && ledger.history(entry.subject()).entries().stream()
                        .takeWhile(before -> before.number() < entry.number())
                        .filter(before -> !(before.saying() instanceof SerialRead))
                        .flatMap(before -> BasisRow.of(before).stream())
                        .anyMatch(row::isCoveredBy);
    }

    @Override
    public void forget() {
        BasisRow.deleteAll();
    }
}
