package wainbook.engineering.specification;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import wainbook.engineering.Plain;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.energy.pull.DriveUnit;
import wainbook.engineering.energy.pull.Slope;
import wainbook.engineering.energy.resistance.Gravity;
import wainbook.engineering.weights.TwoAxles;
import wainbook.engineering.weights.axle.Chassis;
import wainbook.engineering.weights.axle.LoadSpace;

/**
 * {@link PackTable} with what else a vehicle must be able to do: every axle, part loads, lifting axle, slopes, charging over night.
 *
 * @param axleLimitsKg what each axle may carry, from the front
 * @param frontLimitKg what the front group may carry
 * @param startOn slope that it must start on, rise over run
 */
public record SpecificationTable(
        PackTable packs,
        Chassis chassis,
        List<Double> axleLimitsKg,
        double frontLimitKg,
        LoadSpace load,
        DriveUnit drive,
        double startOn,
        Night night) {

    /** Acceleration of a start, m/s². */
    public static final double START_MPS2 = 0.15;

    /** Grip of a dry road, from memory. */
    public static final double GRIP = 0.8;

    public SpecificationTable {
        axleLimitsKg = List.copyOf(axleLimitsKg);
    }

    /**
     * @param grade least of torque and grip; empty where neither limits
     * @param byGrip whether grip is the less
     */
    public record Climb(OptionalDouble grade, boolean byGrip) {}

    /**
     * One row.
     *
     * @param emptyKg load of every axle; likewise {@code ladenKg}
     * @param worstFrontKg on the front group with whatever part of the payload is left
     * @param liftedKg load of every axle that stays down, empty and lifted; no figures where nothing lifts
     * @param start with {@link #START_MPS2}; {@code climb} steady; both with the payload
     */
    public record Row(
            PackRow packs,
            List<Double> emptyKg,
            List<Double> ladenKg,
            double worstFrontKg,
            List<Double> liftedKg,
            Climb start,
            Climb climb,
            double chargeHours,
            List<RuledOut> ruledOut) {
        public Row {
            emptyKg = List.copyOf(emptyKg);
            ladenKg = List.copyOf(ladenKg);
            liftedKg = List.copyOf(liftedKg);
            ruledOut = List.copyOf(ruledOut);
        }

        public boolean feasible() {
            return ruledOut.isEmpty();
        }
    }

    public List<Row> rows() {
        return packs.rows().stream().map(this::row).toList();
    }

    private Row row(PackRow row) {
        double carriedKg = row.laden().totalKg() - row.empty().totalKg();
        double worstFrontKg = load.worstFrontKg(row.empty(), carriedKg);
        List<Double> liftedKg = chassis.rear().lifts()
                ? new Chassis(chassis.front(), chassis.rear().lifted()).loadsKg(chassis.lifted(row.empty()))
                : List.of();
        Climb start = climb(row.laden(), START_MPS2);
        double chargeHours = night.hours(row.packs() * packs.pack().nominalKwh());
        var ruledOut = new ArrayList<>(row.ruledOut());
        boolean payloadFits = row.ruledOut().stream().noneMatch(RuledOut.Payload.class::isInstance);
        if (payloadFits && over(worstFrontKg, frontLimitKg)) {
            ruledOut.add(new RuledOut.PartLoad(worstFrontKg - frontLimitKg));
        }
        IntStream.range(0, liftedKg.size())
                .filter(i -> over(liftedKg.get(i), downLimitsKg().get(i)))
                .mapToObj(i -> new RuledOut.Lifted(
                        i + 1, liftedKg.get(i) - downLimitsKg().get(i)))
                .forEach(ruledOut::add);
        if (start.grade().isPresent() && over(startOn, start.grade().getAsDouble())) {
            ruledOut.add(new RuledOut.Start(start.grade().getAsDouble(), startOn));
        }
        if (over(chargeHours, night.standsHours())) {
            ruledOut.add(new RuledOut.Charging(chargeHours, night.standsHours()));
        }
        return new Row(
                row,
                chassis.loadsKg(row.empty()),
                chassis.loadsKg(row.laden()),
                worstFrontKg,
                liftedKg,
                start,
                climb(row.laden(), 0),
                chargeHours,
                ruledOut);
    }

    /** Of the axles that stay on the road when the others are lifted. */
    private List<Double> downLimitsKg() {
        var limits =
                new ArrayList<>(axleLimitsKg.subList(0, chassis.front().axles().size()));
        List<Double> rear = axleLimitsKg.subList(limits.size(), axleLimitsKg.size());
        IntStream.range(0, rear.size())
                .filter(i -> !chassis.rear().axles().get(i).lifts())
                .mapToObj(rear::get)
                .forEach(limits::add);
        return limits;
    }

    private Climb climb(TwoAxles laden, double accelerationMps2) {
        Vehicle felt = packs.day().vehicle();
        double pull = (drive.greatestForceN() - laden.totalKg() * felt.rotatingFactor() * accelerationMps2)
                / (laden.totalKg() * Gravity.MPS2);
        OptionalDouble torque = Slope.steepest(pull, felt.rolling());
        OptionalDouble grip = Slope.byGrip(GRIP, chassis.drivenShare(laden), felt.rolling());
        boolean byGrip = grip.isPresent() && (torque.isEmpty() || grip.getAsDouble() < torque.getAsDouble());
        return new Climb(byGrip ? grip : torque, byGrip);
    }

    private static boolean over(double value, double limit) {
        return Plain.compared(value) > Plain.compared(limit);
    }
}
