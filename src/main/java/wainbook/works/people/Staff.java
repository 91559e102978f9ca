package wainbook.works.people;

import jakarta.enterprise.context.ApplicationScoped;
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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.works.Person;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.people.Names.Newcomer;

/** Engages people, changes what they are, gives and withdraws competences. */
@ApplicationScoped
public class Staff {

    private static final String COMPETENCE = "ISO 9001:2015 7.2 (clause from memory)";

    /** What is asked of one person's stream. */
    interface OfPerson extends Asked {
        String number();

        @Override
        default List<Subject> writes() {
            return List.of(Subject.person(number()));
        }
    }

    /** A new person; name, user name and password go another way. */
    public record ToEngage(UUID id, String number, List<Role> roles) implements OfPerson {
        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.Engaged.class;
        }
    }

    /** All roles the person has from now on. */
    public record ToChangeRoles(UUID id, String number, List<Role> roles, Optional<Long> seen) implements OfPerson {
        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.RolesGiven.class;
        }
    }

    /** The person works here no longer. */
    public record ToLeave(UUID id, String number, String reason, Optional<Long> seen) implements OfPerson {
        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.Left.class;
        }
    }

    /** A competence, both days included. */
    public record ToGive(
            UUID id,
            String number,
            String competence,
            int level,
            LocalDate validFrom,
            LocalDate validTo,
            String evidence,
            Optional<Long> seen)
            implements OfPerson {
        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.CompetenceGiven.class;
        }
    }

    /** A competence taken away. */
    public record ToWithdraw(UUID id, String number, String competence, String reason, Optional<Long> seen)
            implements OfPerson {
        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.CompetenceWithdrawn.class;
        }
    }

    private final Ledger ledger;
    private final Names names;

    Staff(Ledger ledger, Names names) {
        this.ledger = ledger;
        this.names = names;
    }

    /** The name is kept before the entry that holds its hash, and taken back if there is to be no entry. */
    Outcome<Entry> engage(ToEngage asked, Newcomer newcomer, Actor actor) {
        var against = new ArrayList<Reason>();
        boolean otherName = names.of(asked.number())
                .filter(known -> !known.fullName.equals(newcomer.name()))
                .isPresent();
        if (otherName) {
            against.add(numberTaken(asked));
        }
        if (names.userTaken(newcomer)) {
            against.add(Reason.of("works.userTaken", Reason.WORKS_RULE, newcomer.user())
                    .liftedAt("#user"));
        }
        if (!against.isEmpty()) {
            return Outcome.refused(against);
        }
        String hash = names.keep(newcomer);
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            Subject person = Subject.person(asked.number());
            return reading.of(person).isEmpty()
                    ? Decision.say(person, new WorksSaying.Engaged(hash, asked.roles()))
                    : Decision.refuse(numberTaken(asked));
        });
        if (!outcome.reasons().isEmpty()) {
            names.forget(asked.number());
        }
        return outcome;
    }

    private static Reason numberTaken(ToEngage asked) {
        return Reason.of("works.numberTaken", Reason.WORKS_RULE, asked.number()).liftedAt("#number");
    }

    public Outcome<Entry> changeRoles(ToChangeRoles asked, Actor actor) {
        boolean own = actor.who().equals(asked.number()) && !asked.roles().contains(Role.ADMINISTRATOR);
        return write(
                asked,
                actor,
                own ? List.of(Reason.of("works.ownAdministrator", Reason.WORKS_RULE)) : List.of(),
                new WorksSaying.RolesGiven(asked.roles()));
    }

    public Outcome<Entry> leave(ToLeave asked, Actor actor) {
        var against = new ArrayList<Reason>();
        if (actor.who().equals(asked.number())) {
            against.add(Reason.of("works.ownLeaving", Reason.WORKS_RULE));
        }
        blank(asked.reason(), "#reason").ifPresent(against::add);
        return write(asked, actor, against, new WorksSaying.Left(asked.reason()));
    }

    public Outcome<Entry> give(ToGive asked, Actor actor) {
        var against = new ArrayList<>(againstGiving(asked.number(), actor.who()));
        if (asked.validTo().isBefore(asked.validFrom())) {
            against.add(Reason.of("works.validToEarly", Reason.WORKS_RULE, asked.validFrom(), asked.validTo())
                    .liftedAt("#validTo"));
        }
        blank(asked.evidence(), "#evidence").ifPresent(against::add);
        return write(
                asked,
                actor,
                against,
                new WorksSaying.CompetenceGiven(
                        asked.competence(), asked.level(), asked.validFrom(), asked.validTo(), asked.evidence()));
    }

    /** Asked before the form is drawn as well: nobody judges their own competence. */
    static List<Reason> againstGiving(String number, String who) {
        return number.equals(who) ? List.of(Reason.of("works.ownCompetence", COMPETENCE, number)) : List.of();
    }

    public Outcome<Entry> withdraw(ToWithdraw asked, Actor actor) {
        var against = new ArrayList<Reason>();
        Optional<Person.Competence> held =
                Person.of(ledger.history(Subject.person(asked.number()))).competence(asked.competence());
        if (held.filter(one -> !one.withdrawn()).isEmpty()) {
            against.add(Reason.of("works.notHeld", Reason.WORKS_RULE, asked.number(), asked.competence()));
        }
        blank(asked.reason(), "#reason").ifPresent(against::add);
        return write(asked, actor, against, new WorksSaying.CompetenceWithdrawn(asked.competence(), asked.reason()));
    }

    private static Optional<Reason> blank(String text, String field) {
        return text.isBlank()
                ? Optional.of(Reason.of("works.wordsMissing", Reason.WORKS_RULE).liftedAt(field))
                : Optional.empty();
    }

    private Outcome<Entry> write(OfPerson asked, Actor actor, List<Reason> others, WorksSaying saying) {
        Subject subject = Subject.person(asked.number());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            var against = new ArrayList<>(others);
            if (history.isEmpty()) {
                against.add(Reason.of("works.nobody", Reason.WORKS_RULE, asked.number()));
            } else if (Person.of(history).left()) {
                against.add(Reason.of("works.leftAlready", Reason.WORKS_RULE, asked.number()));
            }
            return against.isEmpty() ? Decision.say(subject, saying) : Decision.refuse(against);
        });
    }
}
