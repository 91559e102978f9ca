package wainbook.quality.containment.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.Leaf;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.CheckItem;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.containment.Closing;
import wainbook.quality.containment.Containment;
import wainbook.quality.containment.Containments;
import wainbook.quality.containment.WorkingOut;
import wainbook.quality.containment.page.view.ContainmentView;
import wainbook.quality.containment.page.view.ReadingView;
import wainbook.quality.containment.page.view.VehicleView;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.quality.containment.vehicle.VehicleDoubts;

/** Brings together what the pages of containments show. */
@ApplicationScoped
class ContainmentLook {

    static final int LEAF = 20;

    private final Ledger ledger;
    private final Containments containments;
    private final WorkingOut workingOut;
    private final Closing closing;
    private final Releases releases;

    ContainmentLook(
            Ledger ledger, Containments containments, WorkingOut workingOut, Closing closing, Releases releases) {
        this.ledger = ledger;
        this.containments = containments;
        this.workingOut = workingOut;
        this.closing = closing;
        this.releases = releases;
    }

    Containment known(String code) {
        return containments.named(code).orElseThrow(NotFoundException::new);
    }

    ContainmentView of(String code, int page, Filled filled, boolean mayDecide, boolean mayOpen) {
        Containment containment = known(code);
        List<VehicleDoubtRow> rows = VehicleDoubtRow.of(code);
        return ledger.drawing(() -> new ContainmentView(
                containment,
                rows,
                rows.stream()
                        .skip((page - 1L) * LEAF)
                        .limit(LEAF)
                        .map(row -> vehicle(code, row.workOrder))
                        .toList(),
                new Leaf(page, LEAF, rows.size(), "/quality/containments/" + code),
                containments.untold(containment),
                workingOut.figuresFor(containment),
                containment.isOpen() ? closing.against(containment) : List.of(),
                filled,
                mayDecide,
                mayOpen));
    }

    /** One vehicle; no page where the containment does not touch it. */
    VehicleView vehicle(String code, String order) {
        History history = ledger.history(Subject.workOrder(order));
        var doubt = VehicleDoubts.of(history).of(code).orElseThrow(NotFoundException::new);
        return new VehicleView(
                WorkOrder.of(history).orElseThrow(NotFoundException::new),
                doubt,
                doubt.readings().stream()
                        .map(reading -> new ReadingView(reading, title(reading.said())))
                        .toList());
    }

    /** The joint's title, else the item's, in the revision in force. */
    String title(Doubted reading) {
        return reading.joint()
                .flatMap(releases::joint)
                .map(Joint::title)
                .or(() -> item(reading.item()))
                .orElseGet(() -> reading.gravity() == Gravity.HIGH_VOLTAGE
                                && reading.stage().isEmpty()
                        ? Words.of("quality.isolationPoint", reading.item())
                        : reading.item());
    }

    private Optional<String> item(String line) {
        String[] sheetAndItem = line.split("/", 2);
        return sheetAndItem.length < 2
                ? Optional.empty()
                : releases.sheetInForce(sheetAndItem[0])
                        .flatMap(released -> released.sheet().item(sheetAndItem[1]))
                        .map(CheckItem::title);
    }
}
