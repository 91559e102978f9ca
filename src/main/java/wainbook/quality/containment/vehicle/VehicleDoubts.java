package wainbook.quality.containment.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.quality.QualitySaying.OperatorNoted;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.ReadingsDoubted;

/** What is in doubt on one vehicle, and what was done about it: a fold of its own stream. */
public record VehicleDoubts(List<VehicleDoubt> all) {

    private static final VehicleDoubts NONE = new VehicleDoubts(List.of());

    public VehicleDoubts {
        all = List.copyOf(all);
    }

    public static VehicleDoubts of(History vehicle) {
        return vehicle.folded(VehicleDoubts.class, NONE, VehicleDoubts::and);
    }

    public Optional<VehicleDoubt> of(String containment) {
        return all.stream().filter(one -> one.containment().equals(containment)).findFirst();
    }

    /** Those with readings that nobody has decided yet, oldest first. */
    public List<VehicleDoubt> open() {
        return all.stream().filter(one -> !one.open().isEmpty()).toList();
    }

    /** Whether an entry holds a reading that is in doubt now. */
    public Optional<VehicleDoubt> about(long entryNumber) {
        return open().stream()
                .filter(one ->
                        one.open().stream().anyMatch(reading -> reading.said().number() == entryNumber))
                .findFirst();
    }

    private VehicleDoubts and(Entry entry) {
        if (entry.saying() instanceof ReadingsDoubted said) {
            return of(said.containment()).isPresent()
                    ? changed(said.containment(), one -> one.workedOut(said, entry))
                    : with(VehicleDoubt.opened(said, entry));
        }
        if (entry.saying() instanceof ReadingsDecided said) {
            return changed(said.containment(), one -> one.decided(said, entry));
        }
        if (entry.saying() instanceof OperatorNoted said) {
            return changed(said.containment(), one -> one.noted(said, entry));
        }
        if (entry.saying() instanceof HoldReleased said) {
            return new VehicleDoubts(
                    all.stream().map(one -> one.released(said.hold())).toList());
        }
        return this;
    }

    private VehicleDoubts with(VehicleDoubt next) {
        var more = new ArrayList<>(all);
        more.add(next);
        return new VehicleDoubts(more);
    }

    private VehicleDoubts changed(String containment, UnaryOperator<VehicleDoubt> change) {
        return new VehicleDoubts(all.stream()
                .map(one -> one.containment().equals(containment) ? change.apply(one) : one)
                .toList());
    }
}
