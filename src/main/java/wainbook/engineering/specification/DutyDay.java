package wainbook.engineering.specification;

import java.util.List;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * A day’s duty by segments, and how the worst day differs from it.
 *
 * @param vehicle at any mass; each row of the table weighs it anew
 * @param payloadShare of the wanted payload that is on board on average
 * @param hydraulicKwh on a usual day
 * @param worstDriving times the driving of a usual day, way and weather together
 * @param worstHydraulic times its hydraulic work
 * @param worstHeatingKwh added on the coldest day
 */
public record DutyDay(
        List<Segment> segments,
        Vehicle vehicle,
        double payloadShare,
        double hydraulicKwh,
        double worstDriving,
        double worstHydraulic,
        double worstHeatingKwh) {

    public DutyDay {
        segments = List.copyOf(segments);
    }

    public double km() {
        return segments.stream().mapToDouble(Segment::distanceKm).sum();
    }

    public double drivingKwh(double massKg) {
        Vehicle weighed = vehicle.weighing(massKg);
        return segments.stream()
                .mapToDouble(segment -> segment.energyKwh(weighed))
                .sum();
    }

    public double usualKwh(double massKg) {
        return drivingKwh(massKg) + hydraulicKwh;
    }

    public double worstKwh(double massKg) {
        return drivingKwh(massKg) * worstDriving + hydraulicKwh * worstHydraulic + worstHeatingKwh;
    }
}
