package wainbook.order.specification;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;
import wainbook.order.specification.SpecificationSaying.ChassisStated;
import wainbook.order.specification.SpecificationSaying.DutyStated;
import wainbook.order.specification.SpecificationSaying.Specified;

/**
 * An order’s specification as it stands.
 *
 * @param seen number of the last entry about it, which an act that judges it must carry; 0 where there is none
 * @param chosen every choice, the last one counts
 */
public record Specification(
        long seen, Optional<Said<Duty>> duty, Optional<Said<ChassisFigures>> chassis, List<Said<Chosen>> chosen) {

    /** What an entry says, with where it stands. */
    public record Said<T>(T what, UUID entry, long number, Instant at, String who) {}

    public Specification {
        chosen = List.copyOf(chosen);
    }

    public static Specification of(History history) {
        return history.folded(
                Specification.class,
                new Specification(0, Optional.empty(), Optional.empty(), List.of()),
                (standing, entry) ->
                        entry.saying() instanceof SpecificationSaying said ? standing.after(said, entry) : standing);
    }

    private Specification after(SpecificationSaying saying, Entry entry) {
        long number = entry.number();
        if (saying instanceof DutyStated stated) {
            return new Specification(number, Optional.of(said(stated.duty(), entry)), chassis, chosen);
        }
        if (saying instanceof ChassisStated stated) {
            return new Specification(number, duty, Optional.of(said(stated.chassis(), entry)), chosen);
        }
        var more = new ArrayList<>(chosen);
        more.add(said(((Specified) saying).chosen(), entry));
        return new Specification(number, duty, chassis, more);
    }

    private static <T> Said<T> said(T what, Entry entry) {
        return new Said<>(
                what,
                entry.id(),
                entry.number(),
                entry.moment().at(),
                entry.moment().who());
    }

    public Optional<Said<Chosen>> standing() {
        return chosen.isEmpty() ? Optional.empty() : Optional.of(chosen.get(chosen.size() - 1));
    }

    /** Whether duty or vehicle were stated anew after the choice. */
    public boolean outdated() {
        return standing()
                .filter(last -> duty.filter(said -> said.number() > last.number())
                                .isPresent()
                        || chassis.filter(said -> said.number() > last.number()).isPresent())
                .isPresent();
    }
}
