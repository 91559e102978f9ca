package wainbook.order.calibration;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.process.CalibrationLibrary;

/** Brings together what was asked, what was read in the vehicle, and what is released. */
@ApplicationScoped
public class CalibrationLook {

    private final Ledger ledger;
    private final ControllersRead controllers;

    CalibrationLook(Ledger ledger, ControllersRead controllers) {
        this.ledger = ledger;
        this.controllers = controllers;
    }

    /** @param history of an order that is there */
    public Comparison compared(History history) {
        return compared(history, ledger.history(Subject.works()));
    }

    /** By what was released at a time. */
    public Comparison compared(History history, Instant at) {
        return compared(history, ledger.history(Subject.works()).upTo(at));
    }

    private Comparison compared(History history, History works) {
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        return Comparison.of(
                order.number(),
                order.ordered().vehicleKind(),
                Wanted.of(history).wishes(),
                controllers.of(history),
                CalibrationLibrary.of(works));
    }
}
