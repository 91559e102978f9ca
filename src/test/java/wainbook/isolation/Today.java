package wainbook.isolation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Person;
import wainbook.isolation.fact.Register;
import wainbook.process.plan.Plan;

/** Days on which one thing is not as usual. */
final class Today {

    private boolean open = true;
    private Optional<String> station;
    private Optional<Plan> plan;
    private boolean isolatorMayIssue;
    private List<Person> people;
    private List<Instrument> instruments;
    private Register register;
    private Set<String> locksElsewhere;
    private List<String> energisingBarredBy;

    private Today(Facts usual) {
        station = usual.station();
        plan = usual.plan();
        isolatorMayIssue = usual.isolatorMayIssue();
        people = usual.people();
        instruments = usual.instruments();
        register = usual.register();
        locksElsewhere = usual.locksElsewhere();
        energisingBarredBy = usual.energisingBarredBy();
    }

    static UnaryOperator<Facts> closed() {
        return with(today -> today.open = false);
    }

    static UnaryOperator<Facts> standsAt(String elsewhere) {
        return with(today -> today.station = Optional.of(elsewhere));
    }

    static UnaryOperator<Facts> plan(Plan other) {
        return with(today -> today.plan = Optional.of(other));
    }

    static UnaryOperator<Facts> isolatorMayIssue() {
        return with(today -> today.isolatorMayIssue = true);
    }

    static UnaryOperator<Facts> person(Person changed) {
        return with(today -> today.people = today.people.stream()
                .map(one -> one.number().equals(changed.number()) ? changed : one)
                .toList());
    }

    static UnaryOperator<Facts> instrument(Instrument changed) {
        return with(today -> today.instruments = today.instruments.stream()
                .map(one -> one.code().equals(changed.code()) ? changed : one)
                .toList());
    }

    static UnaryOperator<Facts> register(List<Register.Item> items) {
        return with(today -> today.register = new Register(items));
    }

    static UnaryOperator<Facts> lockElsewhere(String lock) {
        return with(today -> today.locksElsewhere = Set.of(lock));
    }

    static UnaryOperator<Facts> energisingBarred(String item) {
        return with(today -> today.energisingBarredBy = List.of(item));
    }

    private static UnaryOperator<Facts> with(Consumer<Today> change) {
        return usual -> {
            var today = new Today(usual);
            change.accept(today);
            return new Facts(
                    today.open,
                    today.station,
                    today.plan,
                    usual.limits(),
                    today.isolatorMayIssue,
                    usual.shiftEnd(),
                    today.people,
                    today.instruments,
                    today.register,
                    today.locksElsewhere,
                    usual.sources(),
                    today.energisingBarredBy);
        };
    }
}
