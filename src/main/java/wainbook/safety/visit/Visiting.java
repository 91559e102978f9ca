package wainbook.safety.visit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
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
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.page.Words;
import wainbook.safety.SafetySaying.HostTookOver;
import wainbook.safety.SafetySaying.VisitorEntered;
import wainbook.safety.SafetySaying.VisitorInducted;
import wainbook.safety.SafetySaying.VisitorLeft;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/** Inducts visitors, lets them in by their host, and out again. */
@ApplicationScoped
public class Visiting {

    /** What is asked of whoever inducts a visitor: the name of a new one, or the number of one who is known. */
    public record ToInduct(UUID id, Optional<String> known, String name, String firm, LocalDate validTo) {}

    /** A visitor who comes in; the host is who asks it. */
    public record ToEnter(UUID id, String visitor, String area, Optional<String> permit) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return VisitorEntered.class;
        }
    }

    /** A visit that somebody else takes on as host. */
    public record ToTakeOver(UUID id, int visit) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return HostTookOver.class;
        }
    }

    /** A visitor who is out. */
    public record ToLeave(UUID id, int visit) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return VisitorLeft.class;
        }
    }

    private record ToWriteInduction(UUID id, Optional<String> nameHash, LocalDate validTo) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return VisitorInducted.class;
        }
    }

    private static final String CODE = "[\\p{Alnum}][\\p{Alnum}._-]{0,79}";
    private static final int LONGEST_NAME = 200;

    private final Ledger ledger;
    private final WorksDay day;
    private final VisitorNames names;

    Visiting(Ledger ledger, WorksDay day, VisitorNames names) {
        this.ledger = ledger;
        this.day = day;
        this.names = names;
    }

    public Outcome<Entry> induct(ToInduct asked, Actor actor) {
        boolean fresh = asked.known().isEmpty();
        if (fresh && (asked.name().isBlank() || asked.name().length() > LONGEST_NAME)) {
            return Outcome.refused(
                    Reason.of("safety.nameMissing", Reason.WORKS_RULE).liftedAt("#name"));
        }
        if (asked.firm().length() > LONGEST_NAME) {
            return Outcome.refused(
                    Reason.of("safety.firmTooLong", Reason.WORKS_RULE).liftedAt("#firm"));
        }
        Optional<String> hash =
                fresh ? Optional.of(names.keep(asked.id(), asked.name(), asked.firm())) : Optional.empty();
        Outcome<Entry> outcome =
                ledger.write(new ToWriteInduction(asked.id(), hash, asked.validTo()), actor, reading -> {
                    Visits visits = Visits.of(reading.of(Subject.works()));
                    List<Reason> against = VisitRules.induct(
                            asked.validTo(),
                            person(reading.moment().who()),
                            day.of(reading.moment().at()));
                    if (asked.known()
                            .filter(number -> visits.visitor(number).isEmpty())
                            .isPresent()) {
                        return Decision.refuse(Reason.of("safety.visitorUnknown", Reason.WORKS_RULE));
                    }
                    String number = asked.known().orElseGet(visits::nextVisitor);
                    return against.isEmpty()
                            ? Decision.say(Subject.works(), new VisitorInducted(number, hash, asked.validTo()))
                            : Decision.refuse(against);
                });
        if (fresh && !outcome.reasons().isEmpty() && !isKnown(asked.id())) {
            names.forget(asked.id());
        }
        return outcome;
    }

    /** A second form under the id of somebody who was inducted must not take their name away. */
    private boolean isKnown(UUID id) {
        return ledger.history(Subject.works()).entry(id).isPresent();
    }

    public Outcome<Entry> enter(ToEnter asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Visits visits = Visits.of(reading.of(Subject.works()));
            Optional<Visitor> visitor = visits.visitor(asked.visitor());
            boolean inside =
                    visits.inside().stream().anyMatch(visit -> visit.visitor().equals(asked.visitor()));
            List<Reason> against = VisitRules.enter(
                    visitor,
                    inside,
                    asked.area(),
                    person(reading.moment().who()),
                    day.of(reading.moment().at()));
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(),
                            new VisitorEntered(
                                    visits.next(),
                                    asked.visitor(),
                                    asked.area(),
                                    visitor.orElseThrow().validTo(),
                                    asked.permit()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> takeOver(ToTakeOver asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            List<Reason> against = VisitRules.takeOver(
                    Visits.of(reading.of(Subject.works())).number(asked.visit()),
                    asked.visit(),
                    person(reading.moment().who()),
                    day.of(reading.moment().at()));
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new HostTookOver(asked.visit()))
                    : Decision.refuse(against);
        });
    }

    /** Refused for nothing but that there is no such visit; said a second time, it is on record twice. */
    public Outcome<Entry> leave(ToLeave asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> Visits.of(reading.of(Subject.works()))
                                .number(asked.visit())
                                .isEmpty()
                        ? Decision.refuse(Reason.of("safety.visitNotFound", Reason.WORKS_RULE, asked.visit()))
                        : Decision.say(Subject.works(), new VisitorLeft(asked.visit())));
    }

    /** What stands against this person's inducting, letting in or taking over anybody. Asked before a form is drawn. */
    public List<Reason> againstHosting(Moment now) {
        return VisitRules.mayHost(person(now.who()), day.of(now.at()));
    }

    /** What is wrong with a visit that goes on, a sentence each. */
    public List<String> wrongInWords(Visit visit, Instant now) {
        return wrong(visit, now).stream()
                .map(one -> Words.of("safety.wrong." + one.name()))
                .toList();
    }

    private List<VisitRules.Wrong> wrong(Visit visit, Instant now) {
        return VisitRules.wrong(visit, person(visit.host()), day.of(now), shiftEnd(visit), now);
    }

    /** A works that has set no shifts works round the clock: then a visit is looked at again when the day ends. */
    private Instant shiftEnd(Visit visit) {
        return day.shiftEnd(visit.hostedAt()).orElseGet(() -> day.endOf(day.of(visit.hostedAt())));
    }

    private Optional<Person> person(String number) {
        return Optional.of(number)
                .filter(text -> text.matches(CODE))
                .map(text -> ledger.history(Subject.person(text)))
                .filter(history -> !history.isEmpty())
                .map(Person::of);
    }
}
