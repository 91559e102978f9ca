package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.AtPoint;
import wainbook.isolation.IsolationSaying.DangerReported;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.works.signin.Passwords;

/** Takes one step of an isolation, if its rules let it. Readings that may not count are kept as observations. */
@ApplicationScoped
public class TakeStep {

    /** Steps at which the password is asked again: papers that others rely on, restoration, and another person's lock. */
    public static final Set<Step> SIGNED = Set.copyOf(EnumSet.of(
            Step.ISSUE_PERMIT,
            Step.RESUME,
            Step.ISSUE_SANCTION,
            Step.ISSUE_LIVE_PERMIT,
            Step.RESTORE,
            Step.REPORT_ABANDONED_LOCK,
            Step.REMOVE_ABANDONED_LOCK));

    private final Ledger ledger;
    private final FactsNow factsNow;
    private final Passwords passwords;

    TakeStep(Ledger ledger, FactsNow factsNow, Passwords passwords) {
        this.ledger = ledger;
        this.factsNow = factsNow;
        this.passwords = passwords;
    }

    public Outcome<Entry> take(ToTake asked, Actor actor) {
        Step step = Wanted.step(asked.wanted().getClass());
        Optional<Reason> unsigned = SIGNED.contains(step)
                ? passwords.against(actor.who(), asked.password().orElse(""))
                : Optional.empty();
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> decide(reading.of(order), reading.moment(), asked.wanted()));
    }

    /** Everything that stands against a step; empty when it may be taken. Asked before a page is drawn. */
    public List<Reason> against(History vehicle, Moment moment, Facts facts, Wanted wanted) {
        Isolation now = Isolation.of(vehicle);
        List<String> onPaper = PaperIsolations.of(vehicle).open();
        if (wanted instanceof Wanted.Plan && !onPaper.isEmpty()) {
            return List.of(Reason.of("isolating.onPaper", Reason.WORKS_RULE, String.join(", ", onPaper))
                    .liftedAt("/paper/" + onPaper.get(0)));
        }
        if (wanted instanceof Wanted.Plan && facts.plan().isEmpty()) {
            return List.of(Reason.of("isolating.noPlan", Reason.WORKS_RULE));
        }
        return now.reasonsAgainst(wanted.said(new Situation(now, facts, moment.who())), moment, facts);
    }

    private Decision decide(History vehicle, Moment moment, Wanted wanted) {
        if (WorkOrder.of(vehicle).isEmpty()) {
            return Decision.refuse(Reason.of(
                    "order.notFound", Reason.WORKS_RULE, vehicle.subject().code()));
        }
        Facts facts = factsNow.of(vehicle, moment, wanted.mentions());
        List<Reason> against = against(vehicle, moment, facts, wanted);
        if (wanted instanceof Wanted.Plan && !against.isEmpty()) {
            return Decision.refuse(against);
        }
        Isolation now = Isolation.of(vehicle);
        IsolationSaying said = wanted.said(new Situation(now, facts, moment.who()));
        if (against.isEmpty()) {
            return held(vehicle, Decision.say(vehicle.subject(), said), said, now);
        }
        if (!(said instanceof AtPoint at)) {
            return Decision.refuse(against);
        }
        var kept = new Observed(
                at.point(),
                at.tester(),
                at.readings(),
                against.stream().map(Reason::key).toList());
        return held(vehicle, Decision.say(vehicle.subject(), kept), kept, now);
    }

    /** Danger stops more than the isolation: the vehicle is held until somebody has looked at it. */
    private static Decision held(History vehicle, Decision decision, IsolationSaying said, Isolation now) {
        boolean voltage = said instanceof AtPoint at
                && at.readings().stream().anyMatch(read -> now.limits().dangerous(read.pair(), read.volt()));
        if (!voltage && !(said instanceof DangerReported)) {
            return decision;
        }
        int next = 1 + (int) vehicle.saying(Held.class).count();
        String why = said instanceof DangerReported report
                ? Words.of("isolating.holdForDanger", Words.of("isolation.danger." + report.danger()), report.where())
                : Words.of("isolating.holdForVoltage", ((AtPoint) said).point());
        return decision.andSay(
                vehicle.subject(), new Held(next, HoldKind.SAFETY, List.of(Stops.WORK, Stops.SIGN, Stops.MOVE), why));
    }
}
