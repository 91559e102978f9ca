package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldsByRule;
import wainbook.order.returning.FormerRecords;
import wainbook.page.Words;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.works.Role;

/**
 * Readings of a former order that are in doubt hold the vehicle under the new one, as they would have held it had it been here:
 * no hold was put on record, since the vehicle was gone when the doubt came up.
 */
@ApplicationScoped
class FormerDoubts implements HoldsByRule {

    private final FormerRecords former;
    private final Containments containments;

    FormerDoubts(FormerRecords former, Containments containments) {
        this.former = former;
        this.containments = containments;
    }

    @Override
    public Set<Stops> canStop() {
        return Set.of(Stops.SIGN, Stops.MOVE);
    }

    @Override
    public List<HoldByRule> on(WorkOrder order) {
        return former.of(order).stream().flatMap(this::in).toList();
    }

    private Stream<HoldByRule> in(History history) {
        String order = history.subject().code();
        return VehicleDoubts.of(history).open().stream()
                .filter(doubt -> !doubt.holdStands())
                .map(doubt -> new HoldByRule(
                        Words.of("quality.formerDoubt", doubt.containment(), order),
                        Words.of(
                                "quality.formerDoubtWhy",
                                doubt.open().size(),
                                doubt.about().code()),
                        stops(doubt),
                        doubt.since(),
                        Set.of(Role.QUALITY_ENGINEER),
                        doubt.path(order),
                        Optional.of(order)));
    }

    private Set<Stops> stops(VehicleDoubt doubt) {
        boolean all = containments
                .named(doubt.containment())
                .filter(known -> known.said().holdsAll())
                .isPresent();
        return Set.copyOf(Telling.stops(all
                || doubt.open().stream()
                        .anyMatch(reading -> reading.said().gravity().grave())));
    }
}
