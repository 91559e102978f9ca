package wainbook.order.specification;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.ChassisFigures.AxlePlace;
import wainbook.order.limit.AxleRule.Group;
import wainbook.order.limit.Legal;
import wainbook.order.limit.Weighed;
import wainbook.order.limit.WeightRules;

/**
 * What the vehicle and its axles may weigh: the least of law, plate and design for each.
 *
 * @param axlesKg of each axle from the front
 * @param rearGroup of the tandem as one; absent for a single rear axle
 */
public record LimitsThatCount(Limit gross, List<Limit> axlesKg, Optional<Limit> rearGroup) {

    /** Where a limit comes from. */
    public enum By {
        LAW,
        PLATE,
        DESIGN,
        TYRES
    }

    /**
     * @param legal what the law says of it, whether it is the least or not
     * @param tyres of an axle, whether they are the least or not; absent where they were not stated
     */
    public record Limit(double kg, By by, Legal legal, Optional<ChassisFigures.Tyres> tyres) {
        Limit(double kg, By by, Legal legal) {
            this(kg, by, legal, Optional.empty());
        }

        /** Tyres bind only below plate and law. */
        private Limit with(Optional<ChassisFigures.Tyres> fitted) {
            return fitted.filter(one -> one.axleKg() < kg)
                    .map(one -> new Limit(one.axleKg(), By.TYRES, legal, fitted))
                    .orElse(new Limit(kg, by, legal, fitted));
        }
    }

    public LimitsThatCount {
        axlesKg = List.copyOf(axlesKg);
    }

    public static LimitsThatCount of(ChassisFigures chassis, LocalDate day) {
        WeightRules rules = WeightRules.named(chassis.market()).orElseThrow();
        boolean tandem = chassis.secondRear().isPresent();
        var axles = new ArrayList<Limit>();
        Legal steered = rules.axle(day, Group.SINGLE, false, 0, chassis.twinAir());
        Stream.of(AxlePlace.FRONT, AxlePlace.SECOND_FRONT)
                .filter(chassis.axlePlaces()::contains)
                .map(axle -> least(steered, chassis.plates().frontAxleKg()).with(chassis.tyres(axle)))
                .forEach(axles::add);
        axles.add(least(
                        rules.axle(day, Group.SINGLE, true, 0, chassis.twinAir()),
                        chassis.plates().rearAxleKg())
                .with(chassis.tyres(AxlePlace.REAR)));
        chassis.secondRear()
                .map(second -> least(
                                rules.axle(day, Group.SINGLE, second.driven(), 0, chassis.twinAir()),
                                chassis.plates()
                                        .secondRearAxleKg()
                                        .orElse(chassis.plates().rearAxleKg()))
                        .with(chassis.tyres(AxlePlace.SECOND_REAR)))
                .ifPresent(axles::add);
        return new LimitsThatCount(
                gross(chassis, rules, day), axles, tandem ? Optional.of(group(chassis, rules, day)) : Optional.empty());
    }

    private static Limit gross(ChassisFigures chassis, WeightRules rules, LocalDate day) {
        Legal legal = rules.gross(new Weighed(
                day,
                chassis.axles(),
                chassis.body(),
                chassis.twinAir(),
                chassis.otherEngine(),
                chassis.extraMassKg(),
                Optional.of(firstToLastM(chassis))));
        Limit byDesign = lesser(legal, chassis.plates().grossDesignKg(), By.DESIGN);
        return chassis.plates()
                .grossPlatedKg()
                .filter(plated -> plated.doubleValue() < byDesign.kg())
                .map(plated -> new Limit(plated.doubleValue(), By.PLATE, legal))
                .orElse(byDesign);
    }

    private static Limit group(ChassisFigures chassis, WeightRules rules, LocalDate day) {
        Legal legal = rules.axle(
                day,
                Group.TANDEM,
                true,
                chassis.secondRear().orElseThrow().behindM().doubleValue(),
                chassis.twinAir());
        double plates = chassis.plates().rearAxleKg().doubleValue()
                + chassis.plates()
                        .secondRearAxleKg()
                        .orElse(chassis.plates().rearAxleKg())
                        .doubleValue();
        return legal.kg()
                .filter(kg -> kg <= plates)
                .map(kg -> new Limit(kg, By.LAW, legal))
                .orElse(new Limit(plates, By.PLATE, legal));
    }

    static double firstToLastM(ChassisFigures chassis) {
        return chassis.wheelbaseM().doubleValue()
                + chassis.secondRear()
                        .map(ChassisFigures.SecondRear::behindM)
                        .orElse(BigDecimal.ZERO)
                        .doubleValue();
    }

    private static Limit least(Legal legal, BigDecimal plateKg) {
        return lesser(legal, plateKg, By.PLATE);
    }

    private static Limit lesser(Legal legal, BigDecimal otherKg, By other) {
        return legal.kg()
                .filter(kg -> kg <= otherKg.doubleValue())
                .map(kg -> new Limit(kg, By.LAW, legal))
                .orElse(new Limit(otherKg.doubleValue(), other, legal));
    }
}
