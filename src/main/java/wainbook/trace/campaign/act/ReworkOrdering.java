package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
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
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.returning.Returning;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.ReworkOrdered;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.Step;
import wainbook.trace.campaign.Whose;

/**
 * Orders a vehicle of a campaign back under a new order, or takes the order under which it is awaited or has come already. The
 * order and what the campaign says of it are written together, or neither.
 */
@ApplicationScoped
public class ReworkOrdering {

    private static final int TIMEOUT_S = 60;

    /** @param rework number of the new order, or of the one that is there */
    public record ToOrder(
            UUID id, String campaign, String order, String rework, String route, String operator, LocalDate promisedOn)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReworkOrdered.class;
        }
    }

    /** Ends what was begun together: the order itself was refused. */
    private static final class NotOrdered extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient List<Reason> reasons;

        NotOrdered(List<Reason> reasons) {
            super("the rework order is refused");
            this.reasons = reasons;
        }
    }

    private final Ledger ledger;
    private final OneVehicle vehicles;
    private final Campaigns campaigns;
    private final Returning returning;

    ReworkOrdering(Ledger ledger, OneVehicle vehicles, Campaigns campaigns, Returning returning) {
        this.ledger = ledger;
        this.vehicles = vehicles;
        this.campaigns = campaigns;
        this.returning = returning;
    }

    public Outcome<Entry> order(ToOrder asked, Actor actor) {
        if (!asked.rework().matches(Numbers.FORM)) {
            return Outcome.refused(
                    Reason.of("campaign.reworkNumber", Reason.WORKS_RULE).liftedAt("#rework"));
        }
        try {
            return ledger.together(
                    TIMEOUT_S,
                    () -> noted(asked, actor).map(entry -> {
                        made(asked, entry, actor);
                        return entry;
                    }));
        } catch (NotOrdered refused) {
            return Outcome.refused(refused.reasons);
        }
    }

    private Outcome<Entry> noted(ToOrder asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> vehicles.decide(
                        Step.ORDER_REWORK,
                        asked.campaign(),
                        asked.order(),
                        reading,
                        against(asked),
                        (campaign, one) -> Decision.say(
                                Campaign.subject(campaign.number()), new ReworkOrdered(one.order(), asked.rework()))));
    }

    /** Under which order the vehicle is back, or will be, whatever for: its own where it is awaited under that. */
    public Optional<String> known(String order) {
        return campaigns
                .order(order)
                .flatMap(known ->
                        known.phase() == WorkOrder.Phase.HANDED_OVER ? Whose.onward(known) : Optional.of(order));
    }

    private List<Reason> against(ToOrder asked) {
        var against = new ArrayList<Reason>();
        known(asked.order())
                .filter(known -> !known.equals(asked.rework()))
                .ifPresent(
                        known -> against.add(Reason.of("campaign.backAlready", Reason.WORKS_RULE, asked.order(), known)
                                .liftedAt("#rework")));
        return against;
    }

    private void made(ToOrder asked, Entry noted, Actor actor) {
        if (known(asked.order()).isPresent()) {
            return;
        }
        Campaign campaign = campaigns.named(asked.campaign()).orElseThrow();
        UUID id = UUID.nameUUIDFromBytes(("rework/" + noted.id()).getBytes(StandardCharsets.UTF_8));
        var order = new Returning.ToReturn(
                id,
                asked.rework(),
                asked.order(),
                asked.route(),
                asked.operator(),
                asked.promisedOn(),
                Words.of(
                        "campaign.holdReason",
                        campaign.number(),
                        campaign.said().title()));
        List<Reason> against = returning.order(order, actor).reasons();
        if (!against.isEmpty()) {
            throw new NotOrdered(
                    against.stream().map(ReworkOrdering::atOurField).toList());
        }
    }

    /** The form calls the new number what it is here. */
    private static Reason atOurField(Reason reason) {
        return reason.lift().filter("#number"::equals).isPresent() ? reason.liftedAt("#rework") : reason;
    }
}
