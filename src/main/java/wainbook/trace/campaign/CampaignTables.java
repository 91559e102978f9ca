package wainbook.trace.campaign;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;

/** Campaigns and their vehicles, as lists find them. */
@ApplicationScoped
class CampaignTables implements Projection {

    private final Ledger ledger;

    CampaignTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof CampaignSaying) {
            Campaign.of(ledger.history(entry.subject())).ifPresent(campaign -> rows(campaign, entry));
        }
    }

    /** The campaign's row, and those of the vehicles that the entry speaks of. */
    private static void rows(Campaign campaign, Entry latest) {
        CampaignRow row =
                CampaignRow.<CampaignRow>findByIdOptional(campaign.number()).orElseGet(CampaignRow::new);
        row.number = campaign.number();
        row.title = campaign.said().title();
        row.hazard = campaign.said().hazard();
        row.openedAt = campaign.opened().moment().at();
        row.openedBy = campaign.opened().moment().who();
        row.isClosed = !campaign.isOpen();
        row.closedAt = campaign.closed().map(entry -> entry.moment().at()).orElse(null);
        row.persist();
        About.orders(latest)
                .forEach(order -> campaign.vehicle(order).ifPresent(one -> vehicle(campaign.number(), one)));
    }

    private static void vehicle(String campaign, InCampaign one) {
        String id = CampaignVehicleRow.id(campaign, one.order());
        CampaignVehicleRow row =
                CampaignVehicleRow.<CampaignVehicleRow>findByIdOptional(id).orElseGet(CampaignVehicleRow::new);
        row.id = id;
        row.campaign = campaign;
        row.workOrder = one.order();
        row.operator = one.scope().operator();
        row.isOut = one.takenOut().isPresent();
        row.isSettled = one.settled().isPresent();
        row.askedOutBy = row.isOut
                ? null
                : one.askedOut().map(entry -> entry.moment().who()).orElse(null);
        row.letters = one.letters().size();
        row.rework = one.reworkOrder().orElse(null);
        row.persist();
    }

    @Override
    public void forget() {
        CampaignRow.deleteAll();
        CampaignVehicleRow.deleteAll();
    }
}
