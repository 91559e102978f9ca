package wainbook.engineering.weights;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the axles of one vehicle may carry, from its approval and plates.
 *
 * @param steeringShareMin of the total, on the steered axle
 */
public record AxleLimits(double frontKg, double rearKg, double grossKg, double steeringShareMin) {

    /**
     * A limit as a line: used + rise · payload may not exceed the room.
     *
     * @param rise kilograms a kilogram of payload
     */
    private record Line(Binding binding, double roomKg, double rise) {
        boolean bounds() {
            return rise > 0;
        }

        double atKg() {
            return roomKg / rise;
        }

        boolean brokenAt(double payloadKg) {
            return rise * payloadKg > roomKg + 1e-9 * Math.abs(roomKg);
        }
    }

    /**
     * The greatest payload at one place, and which limit it reaches.
     *
     * @param without the vehicle without it
     * @return below nought where the vehicle is over a limit before anything is loaded; nought where a limit is broken that no payload
     *     mends
     */
    public PayloadLimit payload(TwoAxles without, double fromFrontM) {
        double toRear = fromFrontM / without.wheelbaseM();
        List<Line> lines = List.of(
                new Line(Binding.GROSS, grossKg - without.totalKg(), 1),
                new Line(Binding.FRONT, frontKg - without.frontKg(), 1 - toRear),
                new Line(Binding.REAR, rearKg - without.rearKg(), toRear),
                new Line(
                        Binding.STEERING,
                        without.frontKg() - steeringShareMin * without.totalKg(),
                        steeringShareMin - 1 + toRear));
        PayloadLimit least = lines.stream()
                .filter(Line::bounds)
                .map(line -> new PayloadLimit(line.atKg(), line.binding()))
                .min(Comparator.comparingDouble(PayloadLimit::kg))
                .orElseThrow();
        return lines.stream()
                .filter(line -> !line.bounds() && line.brokenAt(least.kg()))
                .findFirst()
                .map(line -> new PayloadLimit(Math.min(0, least.kg()), line.binding()))
                .orElse(least);
    }

    /** @return where the middle of a payload may lie; empty where it fits nowhere */
    public Optional<Span> payloadCentre(TwoAxles without, double payloadKg) {
        if (payloadKg + without.totalKg() > grossKg) {
            return Optional.empty();
        }
        double wheelbaseM = without.wheelbaseM();
        double steered = steeringShareMin * (without.totalKg() + payloadKg) - without.frontKg();
        double fromM = wheelbaseM * (1 - (frontKg - without.frontKg()) / payloadKg);
        double toM = wheelbaseM * Math.min((rearKg - without.rearKg()) / payloadKg, 1 - steered / payloadKg);
        return fromM <= toM ? Optional.of(new Span(fromM, toM)) : Optional.empty();
    }

    /** Metres behind the front axle. */
    public record Span(double fromM, double toM) {}
}
