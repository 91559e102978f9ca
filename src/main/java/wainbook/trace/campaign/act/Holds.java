package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.hold.Holding;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;

/** Holds the vehicles of a campaign that are in the works, and lets one go when it is decided. */
@ApplicationScoped
public class Holds {

    private final Campaigns campaigns;
    private final Holding holding;

    Holds(Campaigns campaigns, Holding holding) {
        this.campaigns = campaigns;
        this.holding = holding;
    }

    /** Whatever is not held yet; safe to ask for again. Answers what stood against it. */
    public List<Reason> put(String number, Actor actor) {
        Campaign campaign = campaigns.named(number).orElseThrow();
        return campaigns.unheld(campaign).stream()
                .flatMap(one -> put(campaign, one, actor).reasons().stream())
                .toList();
    }

    private Outcome<Entry> put(Campaign campaign, InCampaign one, Actor actor) {
        return holding.hold(
                new Holding.ToHold(
                        Campaigns.holdId(one),
                        one.order(),
                        HoldKind.QUALITY,
                        campaign.said().hazard().stops(),
                        Words.of(
                                "campaign.holdReason",
                                campaign.number(),
                                campaign.said().title())),
                actor);
    }

    /** The decision, and with it the end of the vehicle's hold: by the rule of the campaign, whoever decides. */
    Decision lettingGo(Decision decision, Campaign campaign, InCampaign one) {
        return campaigns
                .hold(one)
                .map(held -> decision.andSay(
                        Subject.workOrder(one.order()),
                        new HoldReleased(held.hold(), Words.of("campaign.holdOver", campaign.number()))))
                .orElse(decision);
    }

    /** Its stream, for whoever lets it go. */
    static List<Subject> streams(String campaign, String order) {
        return List.of(Campaign.subject(campaign), Subject.workOrder(order));
    }
}
