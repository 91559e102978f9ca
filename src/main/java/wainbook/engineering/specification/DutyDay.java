package wainbook.engineering.specification;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.energy.driving.Driven;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Spent;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * A day’s duty by its parts, and how the worst day differs from it.
 *
 * @param vehicle at any mass; each row of the table weighs it anew
 * @param hydraulicKwh on a usual day, other work of the body counted
 * @param worstDriving times the driving of a usual day, way and weather together
 * @param worstHydraulic times its hydraulic work
 * @param coldest of the year: the worst day is as cold
 */
public record DutyDay(
        List<DutyPart> parts,
        Vehicle vehicle,
        double hydraulicKwh,
        double worstDriving,
        double worstHydraulic,
        ColdDay coldest) {

    public DutyDay {
        parts = List.copyOf(parts);
    }

    /**
     * With packs that give as much in the cold.
     *
     * @param payloadShare of the wanted payload that is on board on average
     */
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
                ColdDay.heating(worstHeatingKwh));
    }

    public double km() {
        return parts.stream().mapToDouble(DutyPart::km).sum();
    }

    public double drivingKwh(Carrying carrying) {
        return spent(carrying).stream().mapToDouble(Spent::totalKwh).sum();
    }

    /** Where the energy of each part goes. */
    public List<Spent> spent(Carrying carrying) {
        return parts.stream()
                .map(part -> part.spent(weighed(part, carrying), carrying.packs()))
                .toList();
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
        return drivingKwh * worstDriving + hydraulicKwh * worstHydraulic + coldest.kwh();
    }

    /** A usual day’s work on the coldest day. */
    public double coldKwh(double drivingKwh) {
        return usualKwh(drivingKwh) + coldest.kwh();
    }

    public Vehicle weighed(DutyPart part, Carrying carrying) {
        return vehicle.weighing(carrying.emptyKg() + part.loadShare() * carrying.payloadKg());
    }

    /** A vehicle with so many packs, without and with its whole payload. */
    public record Carrying(double emptyKg, double payloadKg, int packs) {}
}
