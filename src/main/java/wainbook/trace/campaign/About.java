package wainbook.trace.campaign;

import java.util.List;
import wainbook.ledger.Entry;
import wainbook.trace.campaign.CampaignSaying.Answered;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.Opened;
import wainbook.trace.campaign.CampaignSaying.ReworkOrdered;
import wainbook.trace.campaign.CampaignSaying.Settled;
import wainbook.trace.campaign.CampaignSaying.StaysIn;
import wainbook.trace.campaign.CampaignSaying.TakenOut;
import wainbook.trace.campaign.CampaignSaying.TakingOutAsked;
import wainbook.trace.campaign.CampaignSaying.VehiclesAdded;

/** Which vehicles an entry of a campaign speaks of. */
public final class About {

    private About() {}

    /** Their work orders; none where it is about the campaign as a whole. */
    public static List<String> orders(Entry entry) {
        if (entry.saying() instanceof Opened said) {
            return orders(said.vehicles());
        } else if (entry.saying() instanceof VehiclesAdded said) {
            return orders(said.vehicles());
        } else if (entry.saying() instanceof LetterSent said) {
            return said.orders();
        } else if (entry.saying() instanceof TakingOutAsked said) {
            return List.of(said.order());
        } else if (entry.saying() instanceof StaysIn said) {
            return List.of(said.order());
        } else if (entry.saying() instanceof TakenOut said) {
            return List.of(said.order());
        } else if (entry.saying() instanceof Answered said) {
            return List.of(said.order());
        } else if (entry.saying() instanceof ReworkOrdered said) {
            return List.of(said.order());
        }
        return entry.saying() instanceof Settled said ? List.of(said.order()) : List.of();
    }

    private static List<String> orders(List<InScope> some) {
        return some.stream().map(InScope::order).toList();
    }
}
