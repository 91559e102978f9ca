package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.CampaignSaying.Settled;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.SettleRule;
import wainbook.trace.campaign.Step;

/** Ends it for a vehicle otherwise than by a rework order: how, why, and what shows it. Its hold ends with it. */
@ApplicationScoped
public class Settling {

    /**
     * @param entry number of the entry of the vehicle's record that shows it
     * @param sha256 of a file that was handed in
     */
    public record ToSettle(
            UUID id,
            String campaign,
            String order,
            End end,
            String reason,
            Optional<Long> entry,
            Optional<String> sha256)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return Holds.streams(campaign, order);
        }

        @Override
        public Class<? extends Saying> says() {
            return Settled.class;
        }
    }

    private final Ledger ledger;
    private final OneVehicle vehicles;
    private final Holds holds;
    private final EvidenceFiles files;

    Settling(Ledger ledger, OneVehicle vehicles, Holds holds, EvidenceFiles files) {
        this.ledger = ledger;
        this.vehicles = vehicles;
        this.holds = holds;
        this.files = files;
    }

    public Outcome<Entry> settle(ToSettle asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToSettle asked, Reading reading) {
        var typed = new ArrayList<Reason>();
        Typed.against(asked.reason(), Typed.WORDS, "settleReason").ifPresent(typed::add);
        Optional<EvidenceFile> file = asked.sha256().flatMap(files::file);
        if (asked.sha256().isPresent() && file.isEmpty()) {
            typed.add(Reason.of("campaign.fileUnknown", Reason.WORKS_RULE).liftedAt("#file"));
        }
        Optional<InCampaign> known = Campaign.of(reading.of(Campaign.subject(asked.campaign())))
                .flatMap(campaign -> campaign.vehicle(asked.order()));
        known.ifPresent(one -> typed.addAll(SettleRule.against(
                asked.end(),
                asked.entry(),
                file.isPresent(),
                one.scope().head(),
                reading.of(Subject.workOrder(asked.order())).number(),
                !one.letters().isEmpty())));
        return vehicles.decide(
                Step.SETTLE,
                asked.campaign(),
                asked.order(),
                reading,
                typed,
                (campaign, one) -> holds.lettingGo(
                        Decision.say(
                                Campaign.subject(campaign.number()),
                                new Settled(one.order(), asked.end(), asked.reason(), asked.entry(), file)),
                        campaign,
                        one));
    }
}
