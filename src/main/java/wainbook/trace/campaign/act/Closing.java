package wainbook.trace.campaign.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.station.StationSaying.Held;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Closed;
import wainbook.trace.campaign.CampaignSaying.Ended;
import wainbook.trace.campaign.CampaignSaying.Reopened;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.ClosingRule;
import wainbook.trace.campaign.Standing;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;
import wainbook.works.signin.Passwords;

/** Closes a campaign, signed by a second person, and opens it again. */
@ApplicationScoped
public class Closing {

    /** @param seen the number of the campaign's stream when the signer read it */
    public record ToClose(UUID id, String campaign, Optional<Long> seen, String result, String password)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return Closed.class;
        }
    }

    public record ToReopen(UUID id, String campaign, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Campaign.subject(campaign));
        }

        @Override
        public Class<? extends Saying> says() {
            return Reopened.class;
        }
    }

    private final Ledger ledger;
    private final Campaigns campaigns;
    private final Holds holds;
    private final Passwords passwords;
    private final WorksDay day;

    Closing(Ledger ledger, Campaigns campaigns, Holds holds, Passwords passwords, WorksDay day) {
        this.ledger = ledger;
        this.campaigns = campaigns;
        this.holds = holds;
        this.passwords = passwords;
        this.day = day;
    }

    public Outcome<Entry> close(ToClose asked, Actor actor) {
        Optional<Reason> unsigned = passwords.against(actor.who(), asked.password());
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        return ledger.write(
                asked,
                actor,
                reading -> known(asked.campaign(), reading)
                        .map(campaign -> close(campaign, asked, reading.moment()))
                        .orElseGet(() -> unknown(asked.campaign())));
    }

    private Decision close(Campaign campaign, ToClose asked, Moment moment) {
        ClosingRule rule = rule(campaign, moment);
        var against = new ArrayList<>(rule.against());
        Typed.against(asked.result(), Typed.WORDS, "result").ifPresent(against::add);
        return against.isEmpty()
                ? Decision.say(Campaign.subject(campaign.number()), closed(rule, asked.result()))
                : Decision.refuse(against);
    }

    private static Closed closed(ClosingRule rule, String result) {
        Held held = rule.signer()
                .competence(ClosingRule.COMPETENCE)
                .map(known -> new Held(known.code(), known.level(), known.validTo()))
                .orElseThrow();
        return new Closed(
                result,
                rule.standings().entrySet().stream()
                        .map(vehicle -> new Ended(vehicle.getKey(), vehicle.getValue()))
                        .toList(),
                held);
    }

    /** The rule as it stands; a page asks it before it draws. */
    public ClosingRule rule(Campaign campaign, Moment moment) {
        Map<String, Standing> standings = new LinkedHashMap<>();
        campaign.vehicles()
                .forEach((order, one) ->
                        standings.put(order, campaigns.progress(one).standing()));
        return new ClosingRule(
                campaign.number(),
                campaign.isOpen(),
                standings,
                campaign.opened().moment().who(),
                Person.of(ledger.history(Subject.person(moment.who()))),
                day.of(moment.at()));
    }

    public Outcome<Entry> reopen(ToReopen asked, Actor actor) {
        Outcome<Entry> outcome = ledger.write(
                asked,
                actor,
                reading -> known(asked.campaign(), reading)
                        .map(campaign -> reopen(campaign, asked))
                        .orElseGet(() -> unknown(asked.campaign())));
        return outcome.map(entry -> {
            holds.put(asked.campaign(), actor);
            return entry;
        });
    }

    private static Decision reopen(Campaign campaign, ToReopen asked) {
        var against = new ArrayList<Reason>();
        if (campaign.isOpen()) {
            against.add(Reason.of("campaign.openAlready", Reason.WORKS_RULE, campaign.number())
                    .liftedAt(campaign.path()));
        }
        Typed.against(asked.reason(), Typed.WORDS, "reopenReason").ifPresent(against::add);
        return against.isEmpty()
                ? Decision.say(Campaign.subject(campaign.number()), new Reopened(asked.reason()))
                : Decision.refuse(against);
    }

    private static Optional<Campaign> known(String number, Reading reading) {
        return Campaign.of(reading.of(Campaign.subject(number)));
    }

    private static Decision unknown(String number) {
        return Decision.refuse(Reason.of("campaign.notFound", Reason.WORKS_RULE, number));
    }
}
