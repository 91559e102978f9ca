package wainbook.isolation.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.isolation.Isolation;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Person;
import wainbook.isolation.fact.Register;
import wainbook.isolation.proof.Lock;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.works.instruments.InstrumentRow;

/**
 * What a person at the vehicle chooses from: things of the register, instruments, people.
 *
 * @param name a person's name by their number
 */
record Around(
        Isolation isolation,
        Facts facts,
        String who,
        java.time.Instant now,
        List<InstrumentRow> instruments,
        Function<String, String> name,
        Formats formats) {

    List<Option> register(Register.Sort sort) {
        return facts.register().items().stream()
                .filter(item -> item.sort() == sort && !item.retired())
                .map(item -> new Option(item.number(), item.number()))
                .toList();
    }

    /** One's own locks; where one has none, those that are nobody's. */
    List<Option> ownLocks() {
        List<Option> own = locks(Optional.of(who));
        return own.isEmpty() ? locks(Optional.empty()) : own;
    }

    private List<Option> locks(Optional<String> owner) {
        return facts.register().items().stream()
                .filter(item -> item.sort() == Register.Sort.LOCK && !item.retired())
                .filter(item -> item.owner().equals(owner))
                .filter(item -> isolation.lock(item.number()).isEmpty()
                        && !facts.locksElsewhere().contains(item.number()))
                .map(item -> new Option(item.number(), item.number()))
                .toList();
    }

    List<Option> locksOn(boolean mine) {
        return isolation.locks().stream()
                .filter(lock -> lock.owner().equals(who) == mine)
                .map(this::option)
                .toList();
    }

    List<Option> allLocksOn() {
        return isolation.locks().stream().map(this::option).toList();
    }

    private Option option(Lock lock) {
        return new Option(lock.number(), lock.number() + ", " + name.apply(lock.owner()));
    }

    /** Fit ones first. */
    List<Option> instruments(String... kinds) {
        List<String> wanted = List.of(kinds);
        return instruments.stream()
                .filter(row -> wanted.contains(row.kind))
                .sorted(java.util.Comparator.comparing(row -> !fit(row)))
                .map(row -> new Option(row.code, row.inWords()))
                .toList();
    }

    private boolean fit(InstrumentRow row) {
        return facts.instrument(row.code)
                .filter(known -> known.validAt(now)
                        && facts.plan()
                                .map(plan -> known.ratedVolt().compareTo(plan.maximumVolt()) >= 0)
                                .orElse(true))
                .isPresent();
    }

    /** People at a level or above, those with a lock on first; not oneself. */
    List<Option> people(int level) {
        return facts.people().stream()
                .filter(person ->
                        person.levelAt(now) >= level && !person.number().equals(who))
                .map(Person::number)
                .sorted(java.util.Comparator.comparing((String number) -> !isolation.lockOn(number))
                        .thenComparing(number -> number))
                .map(number -> new Option(number, name.apply(number)))
                .toList();
    }

    List<Option> points() {
        return isolation.points().stream()
                .map(code -> new Option(
                        code,
                        code + ", "
                                + isolation
                                        .plan()
                                        .flatMap(plan -> plan.point(code))
                                        .map(point -> point.where())
                                        .orElse("")))
                .toList();
    }

    String shiftEnd() {
        return formats.clock(facts.shiftEnd());
    }
}
