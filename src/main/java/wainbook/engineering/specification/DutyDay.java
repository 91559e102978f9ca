package wainbook.engineering.specification;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.energy.driving.Driven;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * A day’s duty by its parts, and how the worst day differs from it.
 *
 * @param vehicle at any mass; each row of the table weighs it anew
 * @param hydraulicKwh on a usual day, other work of the body counted
 * @param worstDriving times the driving of a usual day, way and weather together
 * @param worstHydraulic times its hydraulic work
 * @param worstHeatingKwh added on the coldest day
 */
public record DutyDay(
        List<DutyPart> parts,
        Vehicle vehicle,
        double hydraulicKwh,
        double worstDriving,
        double worstHydraulic,
        double worstHeatingKwh) {

    public DutyDay {
        parts = List.copyOf(parts);
    }

    /** @param payloadShare of the wanted payload that is on board on average */
    public DutyDay(
            List<Segment> segments,
            Vehicle vehicle,
            double payloadShare,
            double hydraulicKwh,
            double worstDriving,
            double worstHydraulic,
            double worstHeatingKwh) {
        this(
                segments.stream()
                        .map(segment -> (DutyPart) new DutyPart.Described(segment, payloadShare))
                        .toList(),
                vehicle,
                hydraulicKwh,
                worstDriving,
                worstHydraulic,
                worstHeatingKwh);
    }

    public double km() {
        return parts.stream().mapToDouble(DutyPart::km).sum();
    }

    public double drivingKwh(Carrying carrying) {
        return parts.stream()
                .mapToDouble(part -> part.energyKwh(weighed(part, carrying), carrying.packs()))
                .sum();
    }

    /** The first second of a recorded part that the packs cannot give; empty where they can, and for parts that are only described. */
    public Optional<Driven.Beyond> beyond(Carrying carrying) {
        return parts.stream()
                .flatMap(part -> part.beyond(weighed(part, carrying), carrying.packs()).stream())
                .findFirst();
    }

    public double usualKwh(double drivingKwh) {
        return drivingKwh + hydraulicKwh;
    }

    public double worstKwh(double drivingKwh) {
        return drivingKwh * worstDriving + hydraulicKwh * worstHydraulic + worstHeatingKwh;
    }

    private Vehicle weighed(DutyPart part, Carrying carrying) {
        return vehicle.weighing(carrying.emptyKg() + part.loadShare() * carrying.payloadKg());
    }

    /** A vehicle with so many packs, without and with its whole payload. */
    public record Carrying(double emptyKg, double payloadKg, int packs) {}
}
