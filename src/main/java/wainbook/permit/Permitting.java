package wainbook.permit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.rule.Around;
import wainbook.permit.rule.IssueRules;
import wainbook.permit.rule.StepRules;

/** Issues permits, and takes every later step with them. */
@ApplicationScoped
public class Permitting {

    /** What is asked to be permitted. */
    public record ToIssue(
            UUID id,
            Subject stream,
            Work sort,
            Optional<String> place,
            String work,
            List<Trait> circumstances,
            List<Ticked> precautions,
            String receiver,
            Instant validUntil)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(stream);
        }

        @Override
        public Class<? extends Saying> says() {
            return PermitIssued.class;
        }

        PermitIssued as(int number) {
            return new PermitIssued(number, sort, place, work, circumstances, precautions, receiver, validUntil);
        }
    }

    /** A step with a permit that was issued. */
    public record ToTake(UUID id, Subject stream, int permit, Step step, Optional<String> words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(stream);
        }

        @Override
        public Class<? extends Saying> says() {
            return step.says();
        }
    }

    private final Ledger ledger;
    private final Around around;

    Permitting(Ledger ledger, Around around) {
        this.ledger = ledger;
        this.around = around;
    }

    public Outcome<Entry> issue(ToIssue asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History stream = reading.of(asked.stream());
            PermitIssued wanted = asked.as(Permits.of(stream).next());
            var against = new ArrayList<>(where(stream, wanted));
            against.addAll(IssueRules.against(
                    wanted,
                    actor.who(),
                    beside(stream, wanted),
                    around.of(stream, reading.moment().at())));
            return against.isEmpty() ? Decision.say(asked.stream(), wanted) : Decision.refuse(against);
        });
    }

    /** What bars this person from issuing anything; asked before a form is drawn. */
    public List<Reason> againstIssuing(History stream, Moment now) {
        return IssueRules.mayIssue(now.who(), around.of(stream, now.at())).stream()
                .toList();
    }

    public Outcome<Entry> take(ToTake asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History stream = reading.of(asked.stream());
            List<Reason> against = against(stream, asked.permit(), asked.step(), asked.words(), reading.moment());
            return against.isEmpty()
                    ? Decision.say(asked.stream(), asked.step().saying(asked.permit(), asked.words()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against a step by this person now; asked before a page is drawn. */
    public List<Reason> against(History stream, int number, Step step, Optional<String> words, Moment now) {
        return Permits.of(stream)
                .number(number)
                .map(permit -> StepRules.against(
                        permit, step, words, now.who(), beside(stream, permit.said()), around.of(stream, now.at())))
                .orElseGet(() -> List.of(Reason.of("permit.notFound", Reason.WORKS_RULE, number)));
    }

    /** What came between a permit and the vehicle, or another permit, since it was issued. */
    public List<Reason> conflicts(History stream, int number, Moment now) {
        return Permits.of(stream).number(number).stream()
                .flatMap(permit ->
                        IssueRules.conflicts(permit.said(), beside(stream, permit.said()), around.of(stream, now.at()))
                                .stream())
                .toList();
    }

    private static List<Reason> where(History stream, PermitIssued wanted) {
        if (stream.subject().equals(Subject.works())) {
            return wanted.place().isPresent()
                    ? List.of()
                    : List.of(
                            Reason.of("permit.placeMissing", Reason.WORKS_RULE).liftedAt("#place"));
        }
        return WorkOrder.of(stream)
                .filter(order -> order.phase() != WorkOrder.Phase.HANDED_OVER)
                .<List<Reason>>map(order -> List.of())
                .orElseGet(() -> List.of(Reason.of(
                                "permit.noVehicle",
                                Reason.WORKS_RULE,
                                stream.subject().code())
                        .liftedAt("#order")));
    }

    /** The other open permits on the vehicle; without one, at the same place. */
    private static List<Permit> beside(History stream, PermitIssued wanted) {
        return Permits.of(stream).open().stream()
                .filter(other -> other.number() != wanted.permit())
                .filter(other -> !stream.subject().equals(Subject.works())
                        || sameText(other.said().place()).equals(sameText(wanted.place())))
                .toList();
    }

    private static String sameText(Optional<String> place) {
        return place.orElse("").strip().toLowerCase(Locale.ROOT);
    }
}
