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
 * @param packsInTheCold absent: not asked when it was stated, and taken as warm
 * @param use of a year; absent: not asked
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
        Charging charging,
        Optional<PacksInTheCold> packsInTheCold,
        Optional<Use> use) {

    public Duty {
        legs = List.copyOf(legs);
    }

    /** The same day with another recorded way, or with none. */
    public Duty recordedAs(Optional<RecordedWay> other) {
        return new Duty(
                words,
                legs,
                other,
                payloadKg,
                people,
                auxiliaryKw,
                bodyKwh,
                hydraulics,
                heating,
                worst,
                startOnPercent,
                charging,
                packsInTheCold,
                use);
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

    /** What the packs are on the coldest day when the vehicle leaves. */
    public enum PacksInTheCold {
        /** Warmed from the mains before it leaves, and kept so. */
        WARMED,
        AS_THE_AIR
    }

    /**
     * @param daysPerYear with this day’s work
     * @param years that the operator wants to do it; absent: he did not say
     */
    public record Use(BigDecimal daysPerYear, Optional<Integer> years) {}

    /** The usual night in the depot. */
    public record Charging(BigDecimal hours, BigDecimal kw) {}
}
