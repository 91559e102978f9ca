package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.weights.axle.PassengerClass;
import wainbook.ledger.evidence.EvidenceFile;

/**
 * A day’s work as an operator tells it, with the worst day that must still be done.
 *
 * @param words of the operator, without names of people
 * @param payloadKg wanted; for a bus nought, since its people are counted
 * @param auxiliaryKw drawn whenever it drives: air, steering, low voltage, fans, and body consumers that run along
 * @param bodyKwh drawn in a day besides, at a stand
 * @param worst how the worst day differs
 * @param startOnPercent slope on which it must start with its payload
 */
public record Duty(
        String words,
        List<Leg> legs,
        Optional<RecordedWay> recorded,
        BigDecimal payloadKg,
        Optional<People> people,
        BigDecimal auxiliaryKw,
        BigDecimal bodyKwh,
        Optional<Hydraulics> hydraulics,
        Heating heating,
        Worst worst,
        BigDecimal startOnPercent,
        Charging charging) {

    public Duty {
        legs = List.copyOf(legs);
    }

    /**
     * A part of the day.
     *
     * @param meanKmh standstill counted in
     * @param upM climbed in all; likewise {@code downM}
     * @param loadPercent of the payload, on board on average
     */
    public record Leg(
            Way way,
            BigDecimal km,
            BigDecimal meanKmh,
            BigDecimal stopsPerKm,
            BigDecimal upM,
            BigDecimal downM,
            BigDecimal loadPercent) {}

    /** A way recorded at one sample a second; the file is kept. */
    public record RecordedWay(EvidenceFile file, BigDecimal timesADay, BigDecimal loadPercent) {}

    /** Who a bus carries besides its driver. */
    public record People(PassengerClass passengerClass, int seated, int standing) {}

    /** Work of a hydraulic body: cycles with their mean pressure and oil, and minutes of pumping while nothing moves. */
    public record Hydraulics(int cycles, BigDecimal bar, BigDecimal litres, int idleMinutes) {}

    /** What is heated. */
    public enum Room {
        CAB,
        SALOON
    }

    public enum Heater {
        RESISTOR,
        HEAT_PUMP
    }

    /** @param outsideC on the coldest day that counts */
    public record Heating(Room room, Heater heater, BigDecimal outsideC, BigDecimal hours) {}

    /**
     * @param drivingPercent more than a usual day; likewise {@code bodyPercent}
     * @param oddsPercent with which the worst day is to be met at the end of the packs’ life
     */
    public record Worst(BigDecimal drivingPercent, BigDecimal bodyPercent, BigDecimal oddsPercent) {}

    /** The usual night in the depot. */
    public record Charging(BigDecimal hours, BigDecimal kw) {}
}
