package wainbook.isolation;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Whose competence and which instruments an isolation rests on: what must be looked up today before it is judged. */
public record Mentioned(Set<String> people, Set<String> instruments) {

    public Mentioned {
        people = Set.copyOf(people);
        instruments = Set.copyOf(instruments);
    }

    public static Mentioned in(Isolation isolation) {
        var people = new HashSet<String>();
        var instruments = new HashSet<String>();
        Optional.of(isolation.isolator()).filter(who -> !who.isEmpty()).ifPresent(people::add);
        isolation.locks().forEach(lock -> people.add(lock.owner()));
        isolation.abandoned().forEach(lock -> people.add(lock.reportedBy()));
        isolation.proof().ifPresent(proof -> {
            people.add(proof.prover());
            proof.witness().ifPresent(people::add);
            instruments.addAll(Set.of(proof.tester(), proof.source()));
        });
        isolation.permit().ifPresent(permit -> {
            people.add(permit.receiver());
            people.addAll(permit.readers());
        });
        isolation.sanction().ifPresent(sanction -> {
            people.add(sanction.holder());
            instruments.add(sanction.instrument());
        });
        isolation.live().ifPresent(live -> {
            people.add(live.tester());
            people.add(live.second());
            instruments.add(live.gloves());
        });
        return new Mentioned(people, instruments);
    }

    public Mentioned and(Mentioned other) {
        var people = new HashSet<>(this.people);
        people.addAll(other.people);
        var instruments = new HashSet<>(this.instruments);
        instruments.addAll(other.instruments);
        return new Mentioned(people, instruments);
    }

    public static Mentioned people(String... people) {
        return new Mentioned(Set.of(people), Set.of());
    }

    public static Mentioned instruments(String... instruments) {
        return new Mentioned(Set.of(), Set.of(instruments));
    }
}
