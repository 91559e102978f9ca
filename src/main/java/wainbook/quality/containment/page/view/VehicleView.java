package wainbook.quality.containment.page.view;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.OperatorNoted;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.containment.vehicle.VehicleDoubt;

/** One vehicle of a containment. */
public record VehicleView(WorkOrder order, VehicleDoubt doubt, List<ReadingView> readings) {

    /** What passed between the works and the operator, in words. */
    public record Note(Entry entry, String word, String what) {}

    public String path() {
        return doubt.path(order.number());
    }

    public String number() {
        return order.number();
    }

    public boolean handedOver() {
        return order.phase() == WorkOrder.Phase.HANDED_OVER;
    }

    public String phase() {
        return OrderList.word(order.phase());
    }

    public String registration() {
        return order.donor().map(donor -> donor.registration()).orElse("–");
    }

    public String vin() {
        return order.donor().map(donor -> donor.vin()).orElse("–");
    }

    public List<ReadingView> doubtful() {
        return readings.stream()
                .filter(one -> one.said().verdict() != Sureness.SAFE)
                .toList();
    }

    public List<ReadingView> safe() {
        return readings.stream()
                .filter(one -> one.said().verdict() == Sureness.SAFE)
                .toList();
    }

    public List<ReadingView> open() {
        return readings.stream().filter(one -> one.reading().open()).toList();
    }

    public String progress() {
        return doubt.toDecide() == 0
                ? Words.of("quality.allSafe")
                : Words.of("quality.progress", doubt.toDecide() - open().size(), doubt.toDecide());
    }

    public Optional<Integer> heldBy() {
        return doubt.hold().filter(number -> doubt.holdStands());
    }

    public List<Note> notes() {
        return doubt.notes().stream()
                .map(entry -> {
                    OperatorNoted said = (OperatorNoted) entry.saying();
                    return new Note(
                            entry, Words.of("quality.word." + said.word().name()), said.what());
                })
                .toList();
    }

    /** What the operator is asked to do, by the gravest reading. */
    public String asked() {
        return Words.of(doubt.gravest().grave() ? "quality.letterStop" : "quality.letterComeIn");
    }
}
