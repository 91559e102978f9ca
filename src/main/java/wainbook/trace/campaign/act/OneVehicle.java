package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import wainbook.act.Reason;
import wainbook.ledger.Decision;
import wainbook.ledger.Reading;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Step;
import wainbook.trace.campaign.StepRule;

/** What every step for one vehicle has in common: the campaign is there, the vehicle in it, and the rule lets it. */
@ApplicationScoped
public class OneVehicle {

    private final Campaigns campaigns;

    OneVehicle(Campaigns campaigns) {
        this.campaigns = campaigns;
    }

    /** What stands against a step; asked before a page is drawn, too. */
    public List<Reason> against(Step step, Campaign campaign, String order, String who) {
        return StepRule.against(
                step,
                campaign.isOpen(),
                campaign.number(),
                order,
                campaign.vehicle(order).map(campaigns::progress),
                who);
    }

    /** @param typed what stands against what was typed */
    Decision decide(
            Step step,
            String number,
            String order,
            Reading reading,
            List<Reason> typed,
            BiFunction<Campaign, InCampaign, Decision> done) {
        Optional<Campaign> known = Campaign.of(reading.of(Campaign.subject(number)));
        if (known.isEmpty()) {
            return Decision.refuse(Reason.of("campaign.notFound", Reason.WORKS_RULE, number));
        }
        var against = new ArrayList<>(
                against(step, known.get(), order, reading.moment().who()));
        against.addAll(typed);
        return against.isEmpty()
                ? done.apply(known.get(), known.get().vehicle(order).orElseThrow())
                : Decision.refuse(against);
    }
}
