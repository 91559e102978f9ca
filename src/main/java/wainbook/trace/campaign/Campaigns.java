package wainbook.trace.campaign;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/** Finds campaigns, and says how their vehicles stand by the vehicles' own records. */
@ApplicationScoped
public class Campaigns {

    private final Ledger ledger;

    Campaigns(Ledger ledger) {
        this.ledger = ledger;
    }

    public Optional<Campaign> named(String number) {
        return Campaign.of(ledger.history(Campaign.subject(number)));
    }

    /** Open ones that still have something to do with a vehicle. */
    public List<Campaign> about(String order) {
        return CampaignVehicleRow.campaignsOf(order).stream()
                .flatMap(number -> named(number).stream())
                .toList();
    }

    /** All that are open, the oldest first. */
    public List<Campaign> open() {
        return CampaignRow.open().stream()
                .flatMap(row -> named(row.number).stream())
                .toList();
    }

    /** The number that the next one may have. */
    public String next() {
        return String.format(
                "FA-%04d", 1 + ledger.subjects(Subject.Sort.CAMPAIGN).size());
    }

    public Progress progress(InCampaign one) {
        return one.progress(
                withOperator(one.order()), Rework.of(one.reworkOrder().flatMap(this::phase)));
    }

    private boolean withOperator(String order) {
        return order(order).filter(Whose::operator).isPresent();
    }

    /** A work order as it stands. */
    public Optional<WorkOrder> order(String number) {
        return WorkOrder.of(ledger.history(Subject.workOrder(number)));
    }

    private Optional<Phase> phase(String order) {
        return order(order).map(WorkOrder::phase);
    }

    /** The hold that came with a vehicle's coming into scope, if it is still on. */
    public Optional<Held> hold(InCampaign one) {
        History history = ledger.history(Subject.workOrder(one.order()));
        List<Held> standing = WorkOrder.of(history).map(WorkOrder::holds).orElse(List.of());
        return history.entry(holdId(one)).map(entry -> (Held) entry.saying()).filter(standing::contains);
    }

    /** Vehicles in the works that are open in the campaign and were never held for it: something came between. */
    public List<InCampaign> unheld(Campaign campaign) {
        return campaign.isOpen()
                ? campaign.vehicles().values().stream()
                        .filter(one -> progress(one).standing().open() && !withOperator(one.order()))
                        .filter(one -> ledger.history(Subject.workOrder(one.order()))
                                .entry(holdId(one))
                                .isEmpty())
                        .toList()
                : List.of();
    }

    /** Under what id a vehicle is held; the same however often it is tried. */
    public static UUID holdId(InCampaign one) {
        return UUID.nameUUIDFromBytes(
                ("campaign/" + one.said().id() + "/" + one.order()).getBytes(StandardCharsets.UTF_8));
    }
}
