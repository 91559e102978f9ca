package wainbook.handover.record;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import wainbook.handover.HandoverLook;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.road.RoadUse;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.WorkOrder;

/** Brings together what a handover record is judged from. */
@ApplicationScoped
public class RecordLook {

    private final Ledger ledger;
    private final HandoverLook handover;

    RecordLook(Ledger ledger, HandoverLook handover) {
        this.ledger = ledger;
        this.handover = handover;
    }

    /** Empty where there is no such order. */
    public Optional<RecordRules> at(History history, Instant now) {
        return WorkOrder.of(history)
                .map(order -> RecordRules.of(history, order, handover.documents(history, order, now)));
    }

    public Wordlists wordlists() {
        return Wordlists.of(ledger.history(Subject.works()));
    }

    public LocalDate today(Instant now) {
        return handover.today(now);
    }

    /** The most that any reading of the odometer on record says. */
    public static int odometerKm(History history, WorkOrder order) {
        int received = order.donor().map(DonorReceived::odometerKm).orElse(0);
        int driven = RoadUse.of(history)
                .lastDrive()
                .map(drive -> drive.said().toKm())
                .orElse(0);
        int read = HandoverRecord.of(history)
                .state()
                .map(state -> state.said().odometerKm())
                .orElse(0);
        return Math.max(Math.max(received, driven), read);
    }

    /** How somebody of others is called on pages: by their token where the name was deleted. */
    public static String called(String token, UUID entry, int place) {
        return OutsideName.of(entry, place).map(row -> row.fullName).orElse(token);
    }
}
