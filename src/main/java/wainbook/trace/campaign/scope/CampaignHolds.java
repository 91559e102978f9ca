package wainbook.trace.campaign.scope;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldsByRule;
import wainbook.order.returning.FormerRecords;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Whose;
import wainbook.works.Role;

/**
 * A vehicle in the works that an open campaign is about is held for it, whenever it came: one that is received after the campaign
 * was opened, and one that came to fit the query since. Where the campaign put a hold on its record, that one counts.
 */
@ApplicationScoped
class CampaignHolds implements HoldsByRule {

    private final Ledger ledger;
    private final Campaigns campaigns;
    private final Scope scope;
    private final FormerRecords former;

    CampaignHolds(Ledger ledger, Campaigns campaigns, Scope scope, FormerRecords former) {
        this.ledger = ledger;
        this.campaigns = campaigns;
        this.scope = scope;
        this.former = former;
    }

    @Override
    public Set<Stops> canStop() {
        return Set.of(Stops.SIGN, Stops.MOVE);
    }

    @Override
    public List<HoldByRule> on(WorkOrder order) {
        List<Campaign> open = Whose.operator(order) ? List.of() : campaigns.open();
        if (open.isEmpty()) {
            return List.of();
        }
        List<String> orders = Stream.concat(
                        Stream.of(order.number()),
                        former.of(order).stream().map(History::subject).map(Subject::code))
                .toList();
        return open.stream()
                .flatMap(campaign -> hold(campaign, orders).stream())
                .toList();
    }

    /** @param orders of the vehicle, the newest first */
    private Optional<HoldByRule> hold(Campaign campaign, List<String> orders) {
        Optional<InCampaign> known = orders.stream()
                .flatMap(order -> campaign.vehicle(order).stream())
                .findFirst();
        if (known.isPresent()) {
            return known.filter(one -> waits(one, orders.get(0)))
                    .map(one -> hold(campaign, campaign.path() + "/vehicles/" + one.order()));
        }
        return scope.fits(campaign.said().query(), orders)
                ? Optional.of(hold(campaign, campaign.path() + "#since"))
                : Optional.empty();
    }

    /** Here to be put right is not held for it; nor is what somebody let go who may. */
    private boolean waits(InCampaign one, String order) {
        return campaigns.progress(one).standing().open()
                && one.reworkOrder().filter(order::equals).isEmpty()
                && ledger.history(Subject.workOrder(order))
                        .entry(Campaigns.holdId(one))
                        .isEmpty();
    }

    private static HoldByRule hold(Campaign campaign, String path) {
        return new HoldByRule(
                Words.of("campaign.onVehicle", campaign.number()),
                campaign.said().title(),
                Set.copyOf(campaign.said().hazard().stops()),
                campaign.opened().moment().at(),
                Set.of(Role.QUALITY_ENGINEER, Role.WORKS_ENGINEER),
                path,
                Optional.empty());
    }
}
