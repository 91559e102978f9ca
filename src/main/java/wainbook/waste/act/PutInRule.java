package wainbook.waste.act;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.Measure;

/** What stands against putting something into a container: another entry of the List, hazardous with other waste, no room. */
public final class PutInRule {

    private static final String MIXING = "Directive 2008/98/EC art 18, mixing of hazardous waste, from memory";

    private PutInRule() {}

    public static List<Reason> against(Optional<Container> into, String label, Optional<Thing> thing, String key) {
        var against = new ArrayList<Reason>();
        if (into.isEmpty()) {
            against.add(Reason.of("waste.noContainer", Reason.WORKS_RULE, label).liftedAt("/waste"));
        }
        if (thing.isEmpty()) {
            against.add(Reason.of("waste.noThing", Reason.WORKS_RULE, key));
        }
        thing.ifPresent(known -> against.addAll(against(known)));
        into.filter(container -> !container.open())
                .ifPresent(container -> against.add(Reason.of("waste.containerClosed", Reason.WORKS_RULE, label)
                        .liftedAt(Labels.path(label))));
        if (into.isPresent() && thing.isPresent()) {
            against.addAll(against(into.get(), thing.get()));
        }
        return against;
    }

    /** What stands against putting it into any container. */
    private static List<Reason> against(Thing thing) {
        var against = new ArrayList<Reason>();
        thing.container()
                .ifPresent(other -> against.add(Reason.of("waste.placedAlready", Reason.WORKS_RULE, thing.what(), other)
                        .liftedAt(Labels.path(other))));
        if (thing.said().left().isPresent()) {
            against.add(Reason.of("waste.leftAlready", Reason.WORKS_RULE, thing.what()));
        } else if (!thing.fate().waste()) {
            against.add(Reason.of("waste.notWaste", Reason.WORKS_RULE, thing.what()));
        }
        return against;
    }

    private static List<Reason> against(Container container, Thing thing) {
        var against = new ArrayList<Reason>();
        if (container.row().hazardous() != thing.row().hazardous()) {
            against.add(Reason.of(
                    "waste.hazardMixed",
                    MIXING,
                    container.label(),
                    container.row().code(),
                    thing.row().code()));
        } else if (!container.row().equals(thing.row())) {
            against.add(Reason.of(
                    "waste.codeDiffers",
                    Reason.WORKS_RULE,
                    container.label(),
                    container.row().code(),
                    thing.row().code()));
        }
        boolean litres = container.opened().measure() == Measure.L;
        if (litres && thing.volumeL().isEmpty()) {
            against.add(Reason.of("waste.noLitres", Reason.WORKS_RULE, container.label()));
        }
        BigDecimal more = litres ? thing.volumeL().orElse(BigDecimal.ZERO) : thing.massKg();
        BigDecimal room = container.opened().capacity().subtract(container.filled());
        if (more.compareTo(room) > 0) {
            against.add(Reason.of(
                    "waste.full",
                    Reason.WORKS_RULE,
                    container.label(),
                    room.max(BigDecimal.ZERO).toPlainString(),
                    more.toPlainString(),
                    litres ? "l" : "kg"));
        }
        return against;
    }
}
