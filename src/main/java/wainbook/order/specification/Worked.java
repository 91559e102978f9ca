package wainbook.order.specification;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.engineering.energy.driving.Trace;
import wainbook.order.WorkOrder;
import wainbook.order.fitted.Match;
import wainbook.process.ComponentLibrary;

/**
 * All that a specification of one order is worked from.
 *
 * @param library of its kind of vehicle
 * @param recorded the recorded way of the duty, where it has one
 * @param fitted what is fitted against what was chosen
 */
public record Worked(
        WorkOrder order,
        Specification specification,
        ComponentLibrary library,
        LocalDate day,
        List<Trace> recorded,
        Optional<Weighings.Received> received,
        List<Weighings.AxleWeighed> asBuilt,
        Match fitted) {

    public Worked {
        recorded = List.copyOf(recorded);
        asBuilt = List.copyOf(asBuilt);
    }

    /** Why no table can be drawn yet; empty where one can. */
    public List<Reason> missing() {
        String here = "/orders/" + order.number() + "/specification";
        var missing = new ArrayList<Reason>();
        if (specification.duty().isEmpty()) {
            missing.add(Reason.of("order.dutyNotStated", Reason.WORKS_RULE).liftedAt(here + "#duty"));
        } else if (specification.duty().get().what().legs().isEmpty() && recorded.isEmpty()) {
            missing.add(Reason.of("order.dutyWithoutWay", Reason.WORKS_RULE).liftedAt(here + "#duty"));
        }
        if (specification.chassis().isEmpty()) {
            missing.add(Reason.of("order.chassisNotStated", Reason.WORKS_RULE).liftedAt(here + "#vehicle"));
        }
        if (library.packTypes().isEmpty()) {
            missing.add(Reason.of(
                            "order.noPackPlaces",
                            Reason.WORKS_RULE,
                            order.ordered().vehicleKind())
                    .liftedAt("/process/components"));
        }
        return missing;
    }

    /** @param packType one of the library’s */
    public Optional<Working> working(String packType) {
        return missing().isEmpty() && library.packTypes().contains(packType)
                ? Optional.of(new Working(
                        specification.duty().orElseThrow().what(),
                        specification.chassis().orElseThrow().what(),
                        library,
                        packType,
                        day,
                        recorded))
                : Optional.empty();
    }
}
