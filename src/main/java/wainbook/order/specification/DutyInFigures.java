package wainbook.order.specification;

import java.util.ArrayList;
import java.util.List;
import wainbook.engineering.energy.consumers.CabinHeat;
import wainbook.engineering.energy.consumers.HydraulicWork;
import wainbook.engineering.energy.consumers.PackConditioning;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Trace;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.energy.store.Window;
import wainbook.engineering.specification.ColdDay;
import wainbook.engineering.specification.DutyDay;
import wainbook.engineering.specification.DutyPart;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;

/** A duty as the energy model wants it. What an operator cannot know stands here, each with where it comes from. */
public record DutyInFigures(Duty duty, ChassisFigures chassis, List<Trace> recorded) {

    /** From memory: λ of a truck or bus with an electric drive, partly laden. */
    public static final double ROTATING = 1.05;

    /** Air of 24 °C, as the European Union’s consumption method has it (from memory). */
    public static final double AIR_KG_M3 = 1.188;

    /** Driveline, motor, inverter: 0.94 · 0.93 · 0.97, as read in a public life-cycle inventory of buses. */
    public static final double EFFICIENCY = 0.94 * 0.93 * 0.97;

    /** From memory: the driven axle’s part of braking. The least known and the largest of all: measure it on the first vehicles. */
    public static final double REGENERATION = 0.80;

    /** Pump, motor and valves while working; pump and motor while idling at 25 bar and 45 l/min: an example, no source. */
    static final double WORKING = 0.88 * 0.92 * 0.70;

    static final double IDLING = 0.88 * 0.92;

    private static final double IDLE_BAR = 25;
    private static final double IDLE_LITRES = 45;

    /** Descents are braked where they are steeper than the vehicle rolls; an engineer’s estimate of their mean. */
    private static final double STEEP = 0.05;

    private static final double RESISTOR = 0.95;
    private static final double HEAT_PUMP = 2.3;
    private static final double PACK_OHM = 0.12;
    private static final double OPEN_V = 650;
    private static final double HUNDRED = 100;

    public DutyInFigures {
        recorded = List.copyOf(recorded);
    }

    public DutyDay day() {
        var parts = new ArrayList<DutyPart>();
        duty.legs().stream()
                .map(leg ->
                        new DutyPart.Described(segment(leg), leg.loadPercent().doubleValue() / HUNDRED))
                .forEach(parts::add);
        duty.recorded()
                .ifPresent(way -> recorded.stream()
                        .map(trace -> new DutyPart.Recorded(
                                trace,
                                way.timesADay().doubleValue(),
                                way.loadPercent().doubleValue() / HUNDRED,
                                OPEN_V,
                                PACK_OHM))
                        .forEach(parts::add));
        return new DutyDay(
                parts,
                vehicle(),
                bodyKwh(),
                1 + duty.worst().drivingPercent().doubleValue() / HUNDRED,
                1 + duty.worst().bodyPercent().doubleValue() / HUNDRED,
                coldest());
    }

    /** What was not asked means what it did before: packs as in the warmth. */
    ColdDay coldest() {
        double outsideC = duty.heating().outsideC().doubleValue();
        double hours = duty.heating().hours().doubleValue();
        return duty.packsInTheCold()
                .map(packs -> switch (packs) {
                    case WARMED -> new ColdDay(heatingKwh(), hours * PackConditioning.kw(outsideC), 1);
                    case AS_THE_AIR -> new ColdDay(heatingKwh(), 0, Window.coldShare(outsideC));
                })
                .orElseGet(() -> ColdDay.heating(heatingKwh()));
    }

    /** @return the highest speed that the duty asks, km/h */
    public double fastestKmh() {
        double described = duty.legs().stream()
                .mapToDouble(leg -> Math.max(leg.way().stopKmh(), segment(leg).effectiveKmh()))
                .max()
                .orElse(0);
        return Math.max(
                described,
                recorded.stream().mapToDouble(Trace::fastestKmh).max().orElse(0));
    }

    static Segment segment(Duty.Leg leg) {
        double downM = leg.downM().doubleValue();
        return new Segment(
                leg.km().doubleValue(),
                leg.meanKmh().doubleValue(),
                leg.stopsPerKm().doubleValue(),
                leg.way().stopKmh(),
                leg.way().lostShare(),
                Math.max(leg.way().steadyKmh(), leg.meanKmh().doubleValue()),
                leg.upM().doubleValue(),
                downM,
                downM,
                STEEP);
    }

    /** @return at any mass: each row weighs it anew */
    Vehicle vehicle() {
        return new Vehicle(
                chassis.received().frontKg().doubleValue()
                        + chassis.received().rearKg().doubleValue(),
                ROTATING,
                chassis.road().rolling().doubleValue(),
                chassis.road().cdA().doubleValue(),
                AIR_KG_M3,
                EFFICIENCY,
                REGENERATION,
                EFFICIENCY,
                5,
                15,
                200_000,
                duty.auxiliaryKw().doubleValue() * 1000,
                0,
                0);
    }

    /** Hydraulics, and what the body draws besides. */
    double bodyKwh() {
        return duty.bodyKwh().doubleValue() + hydraulicsKwh();
    }

    double hydraulicsKwh() {
        return duty.hydraulics()
                .map(work -> new HydraulicWork(
                                work.bar().doubleValue(),
                                work.litres().doubleValue(),
                                WORKING,
                                IDLE_BAR,
                                IDLE_LITRES,
                                IDLING)
                        .dayKwh(work.cycles(), work.idleMinutes() / 60.0))
                .orElse(0.0);
    }

    /** Losses of a cab and of a saloon: examples from a worked sheet, no source. */
    double heatingKwh() {
        double outsideC = duty.heating().outsideC().doubleValue();
        var heat = duty.heating().room() == Duty.Room.CAB
                ? new CabinHeat(35, 80, 20, outsideC, 150)
                : new CabinHeat(350, 900, 18, outsideC, 20 * 80);
        double performance = duty.heating().heater() == Duty.Heater.RESISTOR ? RESISTOR : HEAT_PUMP;
        return heat.electricW(performance) / 1000 * duty.heating().hours().doubleValue();
    }
}
