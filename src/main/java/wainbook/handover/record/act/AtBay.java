package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordRules;
import wainbook.handover.record.RecordSaying;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.works.Person;

/** What every act at the handover bay does alike: under the lock, by the rules of the vehicle as it stands then. */
@ApplicationScoped
class AtBay {

    private final Ledger ledger;
    private final RecordLook look;

    AtBay(Ledger ledger, RecordLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    /** The vehicle under the lock. */
    record Bay(History history, RecordRules rules, Moment moment, LocalDate today) {

        HandoverRecord record() {
            return rules.record();
        }

        int knownKm() {
            return RecordLook.odometerKm(history, rules.order());
        }

        Decision say(List<Reason> against, java.util.function.Supplier<RecordSaying> saying) {
            return against.isEmpty() ? Decision.say(history.subject(), saying.get()) : Decision.refuse(against);
        }
    }

    /** An act on a record that is not closed yet. */
    Outcome<Entry> write(Asked asked, Actor actor, Function<Bay, Decision> decide) {
        return always(asked, actor, bay -> {
            List<Reason> closed = bay.rules().closed();
            return closed.isEmpty() ? decide.apply(bay) : Decision.refuse(closed);
        });
    }

    /** An act that may come after handing over too. */
    Outcome<Entry> always(Asked asked, Actor actor, Function<Bay, Decision> decide) {
        Subject subject = asked.writes().get(0);
        return ledger.write(
                asked,
                actor,
                reading -> look.at(reading.of(subject), reading.moment().at())
                        .map(rules -> decide.apply(new Bay(
                                reading.of(subject),
                                rules,
                                reading.moment(),
                                look.today(reading.moment().at()))))
                        .orElseGet(
                                () -> Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, subject.code()))));
    }

    History history(String order) {
        return ledger.history(Subject.workOrder(order));
    }

    /** Empty where nobody of the works has this number, or they have left. */
    Optional<Person> person(String number) {
        return Optional.of(number)
                .filter(code -> code.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}"))
                .map(code -> ledger.history(Subject.person(code)))
                .filter(known -> !known.isEmpty())
                .map(Person::of)
                .filter(person -> !person.left());
    }
}
