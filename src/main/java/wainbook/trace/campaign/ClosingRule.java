package wainbook.trace.campaign;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wainbook.act.Reason;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/**
 * What stands against closing a campaign.
 *
 * @param standings of its vehicles, by work order
 * @param opener who opened it
 */
public record ClosingRule(
        String campaign, boolean open, Map<String, Standing> standings, String opener, Person signer, LocalDate today) {

    /** Held by whoever was appointed in writing to sign what the works says to others. */
    public static final String COMPETENCE = "SIGNATORY";

    /** Vehicles named one by one; more are counted. */
    private static final int NAMED = 20;

    public List<Reason> against() {
        if (!open) {
            return List.of(Reason.of("campaign.closedAlready", Reason.WORKS_RULE, campaign)
                    .liftedAt(Campaign.path(campaign) + "#reopen"));
        }
        var against = new ArrayList<>(openVehicles());
        if (opener.equals(signer.number())) {
            against.add(Reason.of("campaign.ownCampaign", Reason.WORKS_RULE, campaign));
        }
        CompetenceRule.against(signer, COMPETENCE, today).ifPresent(against::add);
        return against;
    }

    private List<Reason> openVehicles() {
        var against = new ArrayList<Reason>();
        List<String> orders = standings.entrySet().stream()
                .filter(vehicle -> vehicle.getValue().open())
                .map(Map.Entry::getKey)
                .toList();
        orders.stream()
                .limit(NAMED)
                .forEach(order -> against.add(Reason.of(
                                "campaign.vehicleOpen",
                                Reason.WORKS_RULE,
                                order,
                                standings.get(order).word())
                        .liftedAt(Campaign.path(campaign) + "/vehicles/" + order)));
        if (orders.size() > NAMED) {
            against.add(Reason.of("campaign.moreOpen", Reason.WORKS_RULE, orders.size() - NAMED)
                    .liftedAt(Campaign.path(campaign) + "#vehicles"));
        }
        return against;
    }
}
