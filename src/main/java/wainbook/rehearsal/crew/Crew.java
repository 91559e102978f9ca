package wainbook.rehearsal.crew;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.rehearsal.chance.Dice;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The people of the works, and who of them is at hand for what. */
public final class Crew {

    private static final Set<Role> AT_VEHICLES = Set.of(Role.TECHNICIAN, Role.TEAM_LEADER, Role.INSPECTOR);

    /** How long an item keeps somebody, and how long an isolation or a test does. */
    private static final Duration ITEM = Duration.ofMinutes(20);

    private static final Duration ISOLATION = Duration.ofMinutes(150);

    private final List<Person> people;
    private final WorksDay day;
    private final Whereabouts.At here;

    private Crew(List<Person> people, WorksDay day, Whereabouts.At here) {
        this.people = List.copyOf(people);
        this.day = day;
        this.here = here;
    }

    /**
     * @param numbers whom to count on; others may have been engaged since who have another password
     * @param here the vehicle that they are chosen for: whoever is at another one at the time is not
     */
    public static Crew of(Set<String> numbers, Ledger ledger, WorksDay day, Whereabouts.At here) {
        return new Crew(
                PersonRow.everybody().stream()
                        .filter(row -> !row.hasLeft && numbers.contains(row.number))
                        .map(row -> Person.of(ledger.history(Subject.person(row.number))))
                        .toList(),
                day,
                here);
    }

    public String anyone(Role role, Dice dice) {
        return dice.one(with(role)).number();
    }

    /** Whoever of a station's own people may do the work; somebody from elsewhere where none of them may. */
    public Optional<String> worker(int station, Optional<String> competence, Instant at, Dice dice) {
        return worker(station, competence, 0, at, ITEM, dice);
    }

    private Optional<String> worker(
            int station, Optional<String> competence, int level, Instant at, Duration stay, Dice dice) {
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
        return one(own.isEmpty() ? able : own, able, at, stay, dice);
    }

    /** Whoever of a station's own people may work under a permit, for as long as an isolation lasts. */
    public Optional<String> receiver(int station, Instant at, Dice dice) {
        return worker(station, Optional.of(FactsNow.COMPETENCE), 2, at, ISOLATION, dice);
    }

    /** Somebody at a level of authorisation for high voltage who is none of those named. */
    public Optional<String> authorised(int level, Instant at, Dice dice, String... besides) {
        return somebody(person -> holds(person, FactsNow.COMPETENCE, level, at), at, dice, besides);
    }

    /** Somebody appointed to issue permits who is none of those named. */
    public Optional<String> issuer(Instant at, Dice dice, String... besides) {
        return somebody(person -> holds(person, FactsNow.ISSUER, 0, at), at, dice, besides);
    }

    public List<Person> inspectors() {
        return with(Role.INSPECTOR);
    }

    private Optional<String> somebody(Predicate<Person> who, Instant at, Dice dice, String... besides) {
        List<Person> able = people.stream()
                .filter(who)
                .filter(person -> !person.roles().contains(Role.INSPECTOR))
                .filter(person -> !Arrays.asList(besides).contains(person.number()))
                .toList();
        return one(able, able, at, ISOLATION, dice);
    }

    /** One of those wished for who is not elsewhere; else of all who may but inspectors; else whoever there is. */
    private Optional<String> one(List<Person> wished, List<Person> able, Instant at, Duration stay, Dice dice) {
        return Stream.of(free(wished, at, stay), free(producing(able), at, stay), wished)
                .filter(some -> !some.isEmpty())
                .findFirst()
                .map(some -> dice.one(some).number());
    }

    private static List<Person> producing(List<Person> some) {
        return some.stream()
                .filter(person -> !person.roles().contains(Role.INSPECTOR))
                .toList();
    }

    private List<Person> free(List<Person> some, Instant at, Duration stay) {
        return some.stream()
                .filter(person -> here.free(person.number(), at, stay))
                .toList();
    }

    private boolean holds(Person person, String competence, int level, Instant at) {
        return CompetenceRule.against(person, competence, day.of(at)).isEmpty()
                && person.competence(competence).orElseThrow().level() >= level;
    }

    public List<Person> with(Role role) {
        return people.stream().filter(person -> person.roles().contains(role)).toList();
    }

    /** People keep to their stations: three neighbours share three people and their help. */
    private boolean mans(Person person, int station) {
        List<Person> technicians = with(Role.TECHNICIAN);
        int groups = Math.max(1, technicians.size() / 3);
        return technicians.indexOf(person) % groups == station % groups;
    }
}
