package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.quality.QualitySaying;
import wainbook.quality.QualitySaying.DoubtClosed;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.DoubtWorkedOut;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.quality.containment.vehicle.VehicleDoubts;

/** Containments, and what they touch, as lists read them. A vehicle's rows are made from the whole of its stream. */
@ApplicationScoped
class ContainmentTables implements Projection {

    private final Ledger ledger;

    ContainmentTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof DoubtOpened said) {
            opened(said, entry).persist();
        } else if (entry.saying() instanceof DoubtWorkedOut said) {
            ContainmentRow.<ContainmentRow>findById(said.containment()).vehicles =
                    said.vehicles().size();
        } else if (entry.saying() instanceof DoubtClosed said) {
            ContainmentRow.<ContainmentRow>findById(said.containment()).closed = true;
        } else if (entry.subject().sort() == Subject.Sort.WORK_ORDER
                && (entry.saying() instanceof QualitySaying || entry.saying() instanceof HoldReleased)) {
            String order = entry.subject().code();
            VehicleDoubts.of(ledger.history(entry.subject())).all().forEach(doubt -> vehicle(order, doubt));
        }
    }

    private static ContainmentRow opened(DoubtOpened said, Entry entry) {
        var row = new ContainmentRow();
        row.code = said.containment();
        row.subject = entry.subject().toString();
        row.sort = said.about().sort();
        row.about = said.about().code();
        row.reason = said.reason();
        row.openedAt = entry.moment().at();
        row.vehicles = said.vehicles().size();
        return row;
    }

    private static void vehicle(String order, VehicleDoubt doubt) {
        String id = VehicleDoubtRow.id(doubt.containment(), order);
        VehicleDoubtRow row =
                VehicleDoubtRow.<VehicleDoubtRow>findByIdOptional(id).orElseGet(VehicleDoubtRow::new);
        row.id = id;
        row.containment = doubt.containment();
        row.workOrder = order;
        row.since = doubt.since();
        row.sureOut = doubt.count(Sureness.SURE_OUT);
        row.possible = doubt.count(Sureness.POSSIBLE);
        row.safe = doubt.count(Sureness.SAFE);
        row.openReadings = doubt.open().size();
        row.openSureOut = (int) doubt.open().stream()
                .filter(reading -> reading.said().verdict() == Sureness.SURE_OUT)
                .count();
        row.gravest = doubt.gravest();
        row.held = doubt.holdStands();
        row.informed = doubt.noted(Word.INFORMED);
        row.persist();
    }

    @Override
    public void forget() {
        ContainmentRow.deleteAll();
        VehicleDoubtRow.deleteAll();
    }
}
