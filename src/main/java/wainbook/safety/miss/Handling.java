package wainbook.safety.miss;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
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
import wainbook.safety.SafetySaying.NearMissClosed;
import wainbook.safety.SafetySaying.NearMissLookedAt;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/** Looks at near misses: says who sees to it by when, and in the end what was changed. */
@ApplicationScoped
public class Handling {

    /** Who sees to it, and by when. */
    public record ToLookAt(UUID id, int nearMiss, String owner, LocalDate dueOn) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return NearMissLookedAt.class;
        }
    }

    /** What was changed, so that it does not come to worse the next time. */
    public record ToClose(UUID id, int nearMiss, String changed) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return NearMissClosed.class;
        }
    }

    private static final String CODE = "[\\p{Alnum}][\\p{Alnum}._-]{0,79}";

    private final Ledger ledger;
    private final WorksDay day;

    Handling(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> lookAt(ToLookAt asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = MissRules.lookAt(
                    known(reading.of(Subject.works()), asked.nearMiss()),
                    asked,
                    person(asked.owner()),
                    person(reading.moment().who()),
                    day.of(reading.moment().at()));
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(), new NearMissLookedAt(asked.nearMiss(), asked.owner(), asked.dueOn()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> close(ToClose asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = MissRules.close(
                    known(reading.of(Subject.works()), asked.nearMiss()),
                    asked,
                    person(reading.moment().who()));
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new NearMissClosed(asked.nearMiss(), asked.changed()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against this person's looking at it or closing it, whatever they would say. Asked before a page is drawn. */
    public List<Reason> againstLookingAt(NearMiss miss, Moment now) {
        return MissRules.mayLookAt(miss, person(now.who()));
    }

    public List<Reason> againstClosing(NearMiss miss, Moment now) {
        return MissRules.mayClose(miss, person(now.who()));
    }

    private static Optional<NearMiss> known(History works, int number) {
        return NearMisses.of(works).number(number);
    }

    private Optional<Person> person(String number) {
        return Optional.of(number)
                .filter(text -> text.matches(CODE))
                .map(text -> ledger.history(Subject.person(text)))
                .filter(history -> !history.isEmpty())
                .map(Person::of);
    }
}
