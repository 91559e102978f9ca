package wainbook.rehearsal;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.WorksDay;

/** The people of the works, and who of them is at hand for what. */
final class Crew {

    private static final Set<Role> AT_VEHICLES = Set.of(Role.TECHNICIAN, Role.TEAM_LEADER, Role.INSPECTOR);

    private final List<Person> people;
    private final WorksDay day;

    private Crew(List<Person> people, WorksDay day) {
        this.people = List.copyOf(people);
        this.day = day;
    }

    /** @param numbers whom to count on; others may have been engaged since who have another password */
    static Crew of(Set<String> numbers, Ledger ledger, WorksDay day) {
        return new Crew(
                PersonRow.everybody().stream()
                        .filter(row -> !row.hasLeft && numbers.contains(row.number))
                        .map(row -> Person.of(ledger.history(Subject.person(row.number))))
                        .toList(),
                day);
    }

    String anyone(Role role, Dice dice) {
        return dice.one(with(role)).number();
    }

    /** Whoever of a station's own people may do the work; somebody from elsewhere where none of them may. */
    Optional<String> worker(int station, Optional<String> competence, int level, Instant at, Dice dice) {
        Predicate<Person> may =
                person -> competence.map(code -> holds(person, code, level, at)).orElse(true);
        List<Person> able = people.stream()
                .filter(person -> person.roles().stream().anyMatch(AT_VEHICLES::contains))
                .filter(may)
                .toList();
        List<Person> own = with(Role.TECHNICIAN).stream()
                .filter(person -> mans(person, station))
                .filter(may)
                .toList();
        List<Person> from = own.isEmpty() ? able : own;
        return from.isEmpty() ? Optional.empty() : Optional.of(dice.one(from).number());
    }

    /** Somebody at a level of authorisation for high voltage who is none of those named. */
    Optional<String> authorised(int level, Instant at, Dice dice, String... besides) {
        return somebody(person -> holds(person, FactsNow.COMPETENCE, level, at), dice, besides);
    }

    /** Somebody appointed to issue permits who is none of those named. */
    Optional<String> issuer(Instant at, Dice dice, String... besides) {
        return somebody(person -> holds(person, FactsNow.ISSUER, 0, at), dice, besides);
    }

    List<Person> inspectors() {
        return with(Role.INSPECTOR);
    }

    private Optional<String> somebody(Predicate<Person> who, Dice dice, String... besides) {
        List<Person> able = people.stream()
                .filter(who)
                .filter(person -> !person.roles().contains(Role.INSPECTOR))
                .filter(person -> !Arrays.asList(besides).contains(person.number()))
                .toList();
        return able.isEmpty() ? Optional.empty() : Optional.of(dice.one(able).number());
    }

    private boolean holds(Person person, String competence, int level, Instant at) {
        return CompetenceRule.against(person, competence, day.of(at)).isEmpty()
                && person.competence(competence).orElseThrow().level() >= level;
    }

    private List<Person> with(Role role) {
        return people.stream().filter(person -> person.roles().contains(role)).toList();
    }

    /** People keep to their stations: three neighbours share three people and their help. */
    private boolean mans(Person person, int station) {
        List<Person> technicians = with(Role.TECHNICIAN);
        int groups = Math.max(1, technicians.size() / 3);
        return technicians.indexOf(person) % groups == station % groups;
    }
}
