package wainbook.isolation.fact;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.process.plan.Plan;

/**
 * What is true today outside the isolation’s own stream. Brought in by the act, at the act’s moment; a value, so that a
 * decision can be repeated.
 *
 * @param workOrderOpen whether the work order may be worked on
 * @param station where the vehicle stands
 * @param plan the released plan of its variant
 * @param limits the works’ figures today
 * @param isolatorMayIssue the works lets an isolator issue the permit too
 * @param shiftEnd latest end of a paper issued now
 * @param locksElsewhere numbers of locks that are on at other vehicles
 * @param sources the vehicle’s list of sources, to be looked for before it is declared to have none aboard
 * @param energisingBarredBy work given to a later stage that must be done before anything is energised
 */
public record Facts(
        boolean workOrderOpen,
        Optional<String> station,
        Optional<Plan> plan,
        Limits limits,
        boolean isolatorMayIssue,
        Instant shiftEnd,
        List<Person> people,
        List<Instrument> instruments,
        Register register,
        Set<String> locksElsewhere,
        List<String> sources,
        List<String> energisingBarredBy) {

    public Facts {
        people = List.copyOf(people);
        instruments = List.copyOf(instruments);
        locksElsewhere = Set.copyOf(locksElsewhere);
        sources = List.copyOf(sources);
        energisingBarredBy = List.copyOf(energisingBarredBy);
    }

    public Person person(String number) {
        return people.stream()
                .filter(person -> person.number().equals(number))
                .findFirst()
                .orElseGet(() -> Person.unknown(number));
    }

    public Optional<Instrument> instrument(String code) {
        return instruments.stream()
                .filter(instrument -> instrument.code().equals(code))
                .findFirst();
    }
}
