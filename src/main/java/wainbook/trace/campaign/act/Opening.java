package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
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
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.Opened;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.scope.QueryRule;
import wainbook.trace.campaign.scope.Scope;

/** Opens a campaign over the vehicles that a query finds now, and holds those of them that are in the works. */
@ApplicationScoped
public class Opening {

    public record ToOpen(UUID id, String number, String title, String wrong, String remedy, Hazard hazard, Query query)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(number));
        }

        @Override
        public Class<? extends Saying> says() {
            return Opened.class;
        }
    }

    private final Ledger ledger;
    private final Scope scope;
    private final Holds holds;

    Opening(Ledger ledger, Scope scope, Holds holds) {
        this.ledger = ledger;
        this.scope = scope;
        this.holds = holds;
    }

    public Outcome<Entry> open(ToOpen asked, Actor actor) {
        if (!asked.number().matches(Campaign.FORM)) {
            return Outcome.refused(
                    Reason.of("campaign.numberForm", Reason.WORKS_RULE).liftedAt("#number"));
        }
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(against(asked));
            if (!reading.of(Campaign.subject(asked.number())).isEmpty()) {
                against.add(Reason.of("campaign.numberTaken", Reason.WORKS_RULE, asked.number())
                        .liftedAt("#number"));
            }
            List<InScope> found = against.isEmpty() ? scope.find(asked.query()) : List.of();
            if (against.isEmpty() && found.isEmpty()) {
                against.add(
                        Reason.of("campaign.nothingFound", Reason.WORKS_RULE).liftedAt("#code1"));
            }
            return against.isEmpty()
                    ? Decision.say(Campaign.subject(asked.number()), said(asked, found))
                    : Decision.refuse(against);
        });
        return outcome.map(entry -> {
            holds.put(asked.number(), actor);
            return entry;
        });
    }

    private static Opened said(ToOpen asked, List<InScope> found) {
        return new Opened(asked.title(), asked.wrong(), asked.remedy(), asked.hazard(), asked.query(), found);
    }

    /** What stands against what was typed, whatever it would find. */
    public List<Reason> against(ToOpen asked) {
        var against = new ArrayList<Reason>();
        Typed.against(asked.title(), Typed.TITLE, "title").ifPresent(against::add);
        Typed.against(asked.wrong(), Typed.WORDS, "wrong").ifPresent(against::add);
        Typed.against(asked.remedy(), Typed.WORDS, "remedy").ifPresent(against::add);
        against.addAll(QueryRule.against(asked.query()));
        return against;
    }
}
