package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.StaysIn;
import wainbook.trace.campaign.CampaignSaying.TakenOut;
import wainbook.trace.campaign.CampaignSaying.TakingOutAsked;
import wainbook.trace.campaign.Step;

/** Takes a vehicle out of the scope: one person says why, another agrees. */
@ApplicationScoped
public class TakingOut {

    public record ToAsk(UUID id, String campaign, String order, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return TakingOutAsked.class;
        }
    }

    public record ToAgree(UUID id, String campaign, String order) implements Asked {
        @Override
        public List<Subject> writes() {
            return Holds.streams(campaign, order);
        }

        @Override
        public Class<? extends Saying> says() {
            return TakenOut.class;
        }
    }

    /** Whoever asked may take it back; whoever was to agree may say no. */
    public record ToKeepIn(UUID id, String campaign, String order, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return StaysIn.class;
        }
    }

    private final Ledger ledger;
    private final OneVehicle vehicles;
    private final Holds holds;

    TakingOut(Ledger ledger, OneVehicle vehicles, Holds holds) {
        this.ledger = ledger;
        this.vehicles = vehicles;
        this.holds = holds;
    }

    public Outcome<Entry> ask(ToAsk asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> vehicles.decide(
                        Step.ASK_OUT,
                        asked.campaign(),
                        asked.order(),
                        reading,
                        Typed.against(asked.reason(), Typed.WORDS, "outReason").stream()
                                .toList(),
                        (campaign, one) -> Decision.say(
                                Campaign.subject(campaign.number()), new TakingOutAsked(one.order(), asked.reason()))));
    }

    public Outcome<Entry> keepIn(ToKeepIn asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> vehicles.decide(
                        Step.KEEP_IN,
                        asked.campaign(),
                        asked.order(),
                        reading,
                        Typed.against(asked.reason(), Typed.WORDS, "stayReason").stream()
                                .toList(),
                        (campaign, one) -> Decision.say(
                                Campaign.subject(campaign.number()), new StaysIn(one.order(), asked.reason()))));
    }

    public Outcome<Entry> agree(ToAgree asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> vehicles.decide(
                        Step.AGREE_OUT,
                        asked.campaign(),
                        asked.order(),
                        reading,
                        List.of(),
                        (campaign, one) -> holds.lettingGo(
                                Decision.say(Campaign.subject(campaign.number()), new TakenOut(one.order())),
                                campaign,
                                one)));
    }
}
