package wainbook.pack;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.watch.WatchTimes;

/** Packs as lists read them, made from the whole of a pack's stream. */
@ApplicationScoped
class PackTables implements Projection {

    private final Ledger ledger;

    PackTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof PackSaying && entry.subject().sort() == Subject.Sort.UNIT) {
            Pack.of(ledger.history(entry.subject())).ifPresent(PackTables::row);
        }
    }

    private static void row(Pack pack) {
        PackRow row = PackRow.known(pack.serial()).orElseGet(PackRow::new);
        row.serial = pack.serial();
        row.packType = pack.received().map(PackReceived::packType).orElse(null);
        row.lot = pack.lot().orElse(null);
        row.place = pack.place().orElse(null);
        row.chargePercent = pack.chargePercent().orElse(null);
        row.lookedAt = pack.looked().map(entry -> entry.moment().at()).orElse(null);
        row.accepted = pack.accepted();
        row.quarantined = pack.quarantined();
        row.setAside = pack.setAside();
        row.holdsLot = pack.holdsLot();
        row.alarmed = pack.quarantine()
                .filter(Quarantine::stands)
                .flatMap(Quarantine::alarm)
                .isPresent();
        row.outsideWindow = !pack.outside().isEmpty();
        row.nextWatch = pack.quarantine()
                .filter(Quarantine::stands)
                .map(Quarantine::times)
                .flatMap(WatchTimes::next)
                .orElse(null);
        row.gone = pack.gone();
        row.since = pack.quarantine()
                .filter(Quarantine::stands)
                .map(Quarantine::begun)
                .or(pack::looked)
                .map(entry -> entry.moment().at())
                .orElse(null);
        row.persist();
    }

    @Override
    public void forget() {
        PackRow.deleteAll();
    }
}
