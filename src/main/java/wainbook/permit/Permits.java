package wainbook.permit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Moved;
import wainbook.permit.PermitSaying.PermitClosed;
import wainbook.permit.PermitSaying.PermitHandedBack;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.PermitReceived;
import wainbook.permit.PermitSaying.WorkStopped;
import wainbook.permit.rule.Conflict;

/** Every permit of a vehicle, or of the works' places, by number from 1. */
public record Permits(List<Permit> all) {

    public Permits {
        all = List.copyOf(all);
    }

    public static Permits of(History history) {
        return history.folded(Permits.class, new Permits(List.of()), Permits::and);
    }

    public Optional<Permit> number(int number) {
        return number < 1 || number > all.size() ? Optional.empty() : Optional.of(all.get(number - 1));
    }

    int next() {
        return all.size() + 1;
    }

    public List<Permit> open() {
        return all.stream().filter(Permit::open).toList();
    }

    /** Open permits that packs coming aboard would meet: by the same table as when a permit is issued. */
    public List<Reason> againstFittingPacks() {
        return open().stream()
                .filter(permit -> !Conflict.between(permit.traits(), Set.of(Trait.PACKS_ABOARD))
                        .isEmpty())
                .map(permit -> Reason.of("permit.packsWait", Reason.PRACTICE, permit.number())
                        .liftedAt("/permits/" + Where.word(permit.subject()) + "/" + permit.number()))
                .toList();
    }

    private Permits and(Entry entry) {
        if (entry.saying() instanceof PermitIssued) {
            var more = new ArrayList<>(all);
            more.add(Permit.of(entry));
            return new Permits(more);
        } else if (entry.saying() instanceof Moved) {
            return all.isEmpty()
                    ? this
                    : new Permits(
                            all.stream().map(permit -> permit.movedBy(entry)).toList());
        }
        return entry.saying() instanceof PermitSaying said && !(said instanceof PermitSaying.OnPaper)
                ? changed(number(said), entry)
                : this;
    }

    private Permits changed(int number, Entry entry) {
        return new Permits(all.stream()
                .map(permit -> permit.number() == number ? permit.and(entry) : permit)
                .toList());
    }

    private static int number(PermitSaying said) {
        if (said instanceof PermitReceived received) {
            return received.permit();
        } else if (said instanceof WorkStopped stopped) {
            return stopped.permit();
        } else if (said instanceof PermitHandedBack back) {
            return back.permit();
        }
        return ((PermitClosed) said).permit();
    }
}
