package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
import wainbook.pack.PackSaying.StorageChecked;
import wainbook.pack.Serials;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/** Looks at a pack in storage, and says what lies outside the window. */
@ApplicationScoped
public class StorageChecking {

    /** What was found. */
    public record ToCheck(
            UUID id,
            String serial,
            BigDecimal chargePercent,
            BigDecimal temperatureC,
            boolean dry,
            String place,
            Optional<String> words)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Serials.subject(serial));
        }

        @Override
        public Class<? extends Saying> says() {
            return StorageChecked.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    StorageChecking(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> check(ToCheck asked, Actor actor) {
        Subject subject = Serials.subject(asked.serial());
        return ledger.write(asked, actor, reading -> {
            LocalDate today = day.of(reading.moment().at());
            Person person = Person.of(ledger.history(Subject.person(actor.who())));
            var against = new ArrayList<>(StorageRule.against(reading.of(subject), person, today));
            TypedRule.charge(asked.chargePercent()).ifPresent(against::add);
            TypedRule.celsius(asked.temperatureC(), "temperatureC").ifPresent(against::add);
            TypedRule.name(asked.place(), "place").ifPresent(against::add);
            TypedRule.words(asked.words()).ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(
                            subject,
                            new StorageChecked(
                                    asked.chargePercent(),
                                    asked.temperatureC(),
                                    asked.dry(),
                                    asked.place(),
                                    asked.words(),
                                    Qualified.authority(person),
                                    StorageWindow.outside(asked.chargePercent(), asked.temperatureC(), asked.dry())))
                    : Decision.refuse(against);
        });
    }

    /** What stands against a check by whoever looks; asked before a form is drawn. */
    public List<Reason> against(History history, Moment now) {
        Person person = Person.of(ledger.history(Subject.person(now.who())));
        return StorageRule.against(history, person, day.of(now.at()));
    }
}
