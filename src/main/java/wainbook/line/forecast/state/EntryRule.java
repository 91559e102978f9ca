package wainbook.line.forecast.state;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;

/**
 * In which order vehicles come onto the line: as they are promised or as they were ordered, whichever has foretold the entries on
 * record better; unless a line manager has set their order. Of each two vehicles of which both were ordered when the first of them
 * entered, a rule foretells which it was.
 *
 * @param asOrdered otherwise as they are promised, which is taken for granted without a record
 * @param foretold pairs that the rule foretold, of all {@code pairs}
 * @param set those it names come first, in its order
 */
public record EntryRule(boolean asOrdered, long foretold, long pairs, Optional<SetOrder> set) {

    EntryRule(boolean asOrdered, long foretold, long pairs) {
        this(asOrdered, foretold, pairs, Optional.empty());
    }

    /** What counts of one vehicle that has come onto the line. */
    record Came(Instant ordered, LocalDate promisedOn, Instant entered) {}

    static EntryRule of(List<Came> came) {
        long pairs = 0;
        long promised = 0;
        long ordered = 0;
        for (Came one : came) {
            for (Came other : came) {
                if (one.entered().isBefore(other.entered()) && other.ordered().isBefore(one.entered())) {
                    pairs++;
                    promised += one.promisedOn().isBefore(other.promisedOn()) ? 1 : 0;
                    ordered += one.ordered().isBefore(other.ordered()) ? 1 : 0;
                }
            }
        }
        return ordered > promised ? new EntryRule(true, ordered, pairs) : new EntryRule(false, promised, pairs);
    }

    EntryRule following(Optional<SetOrder> order) {
        return new EntryRule(asOrdered, foretold, pairs, order);
    }

    /** Empty for one that is not on the line yet. */
    static Optional<Came> came(History history) {
        return history.saying(Moved.class)
                .filter(entry -> ((Moved) entry.saying()).direction() == Direction.ONTO_LINE)
                .findFirst()
                .flatMap(entered -> ordered(history)
                        .map(entry -> new Came(
                                entry.moment().at(),
                                ((Ordered) entry.saying()).promisedOn(),
                                entered.moment().at())));
    }

    static Optional<Entry> ordered(History history) {
        return history.saying(Ordered.class).findFirst();
    }

    /** Donors that are here before those that are not; each in the order that is set, then by the rule. */
    Comparator<Waiting> first() {
        Comparator<Waiting> here = Comparator.comparing(one -> one.vehicle().doing() == OnHand.Doing.ORDERED);
        Comparator<Waiting> wanted = here.thenComparing(
                one -> set.map(order -> order.place(one.vehicle().order())).orElse(0));
        Comparator<Waiting> promised = wanted.thenComparing(one -> one.vehicle().promisedOn());
        return (asOrdered ? wanted.thenComparing(Waiting::ordered) : promised)
                .thenComparing(one -> one.vehicle().order());
    }

    /** One in front of the line. */
    record Waiting(OnHand vehicle, Instant ordered) {}
}
