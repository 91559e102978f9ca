package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
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
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.VehiclesAdded;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Step;
import wainbook.trace.campaign.StepRule;
import wainbook.trace.campaign.scope.Scope;

/** Brings vehicles into the scope of an open campaign: what matches since, or one that somebody knows of; or one that was taken out. */
@ApplicationScoped
public class Adding {

    public record ToAdd(UUID id, String campaign, List<String> orders, String reason) implements Asked {
        public ToAdd {
            orders = List.copyOf(orders);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return VehiclesAdded.class;
        }
    }

    private final Ledger ledger;
    private final Campaigns campaigns;
    private final Scope scope;
    private final Holds holds;

    Adding(Ledger ledger, Campaigns campaigns, Scope scope, Holds holds) {
        this.ledger = ledger;
        this.campaigns = campaigns;
        this.scope = scope;
        this.holds = holds;
    }

    /** Vehicles that the campaign's query finds now and that never were in its scope. */
    public List<InScope> since(Campaign campaign) {
        Map<String, InCampaign> known = byNewest(campaign);
        return campaign.isOpen()
                ? scope.find(campaign.said().query()).stream()
                        .filter(found -> !known.containsKey(found.order()))
                        .toList()
                : List.of();
    }

    /** A vehicle that came back under a rework order is in scope under its former one. */
    private Map<String, InCampaign> byNewest(Campaign campaign) {
        Map<String, InCampaign> known = new HashMap<>();
        campaign.vehicles().values().forEach(one -> {
            known.put(scope.newest(one.order()), one);
            known.put(one.order(), one);
        });
        return known;
    }

    public Outcome<Entry> add(ToAdd asked, Actor actor) {
        Subject subject = Campaign.subject(asked.campaign());
        Outcome<Entry> outcome = ledger.write(
                asked,
                actor,
                reading -> Campaign.of(reading.of(subject))
                        .map(campaign -> decide(campaign, asked, actor))
                        .orElseGet(() ->
                                Decision.refuse(Reason.of("campaign.notFound", Reason.WORKS_RULE, asked.campaign()))));
        return outcome.map(entry -> {
            holds.put(asked.campaign(), actor);
            return entry;
        });
    }

    private Decision decide(Campaign campaign, ToAdd asked, Actor actor) {
        Map<String, InScope> matching = scope.find(campaign.said().query()).stream()
                .collect(Collectors.toMap(InScope::order, Function.identity()));
        Map<String, InCampaign> known = byNewest(campaign);
        var against = new ArrayList<Reason>();
        var added = new ArrayList<InScope>();
        Typed.against(asked.reason(), Typed.WORDS, "reason").ifPresent(against::add);
        if (asked.orders().isEmpty()) {
            against.add(Reason.of("campaign.noneChosen", Reason.WORKS_RULE).liftedAt("#orders"));
        }
        for (String order : asked.orders().stream().distinct().toList()) {
            against.addAll(StepRule.against(
                    Step.ADD,
                    campaign.isOpen(),
                    campaign.number(),
                    order,
                    Optional.ofNullable(known.get(order)).map(campaigns::progress),
                    actor.who()));
            Optional<InScope> vehicle = Optional.ofNullable(matching.get(order)).or(() -> known(order));
            vehicle.ifPresentOrElse(
                    added::add,
                    () -> against.add(Reason.of("campaign.orderUnknown", Reason.WORKS_RULE, order)
                            .liftedAt("#orders")));
        }
        return against.isEmpty()
                ? Decision.say(Campaign.subject(campaign.number()), new VehiclesAdded(added, asked.reason()))
                : Decision.refuse(against);
    }

    private Optional<InScope> known(String order) {
        return order.matches(Numbers.FORM) ? scope.vehicle(order, List.of()) : Optional.empty();
    }
}
