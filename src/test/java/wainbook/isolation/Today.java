package wainbook.isolation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wainbook.process.plan.Plan;

/** Days on which one thing is not as usual. */
final class Today {
    private Today() {}

    static UnaryOperator<Facts> closed() {
        return f -> new Facts(
                false,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> standsAt(String station) {
        return f -> new Facts(
                true,
                Optional.of(station),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> plan(Plan plan) {
        return f -> new Facts(
                true,
                f.station(),
                Optional.of(plan),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> isolatorMayIssue() {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                true,
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> person(Person changed) {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people().stream()
                        .map(one -> one.number().equals(changed.number()) ? changed : one)
                        .toList(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> instrument(Instrument changed) {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments().stream()
                        .map(one -> one.code().equals(changed.code()) ? changed : one)
                        .toList(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> register(List<Register.Item> items) {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                new Register(items),
                f.locksElsewhere(),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> lockElsewhere(String lock) {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                Set.of(lock),
                f.sources(),
                f.energisingBarredBy());
    }

    static UnaryOperator<Facts> energisingBarred(String item) {
        return f -> new Facts(
                true,
                f.station(),
                f.plan(),
                f.limits(),
                f.isolatorMayIssue(),
                f.shiftEnd(),
                f.people(),
                f.instruments(),
                f.register(),
                f.locksElsewhere(),
                f.sources(),
                List.of(item));
    }
}
