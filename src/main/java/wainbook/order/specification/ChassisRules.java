package wainbook.order.specification;

import java.math.BigDecimal;
import java.util.List;
import wainbook.act.Reason;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.limit.WeightRules;

/** What may be said of a vehicle. Bounds are wide: they catch slips of the pen. */
final class ChassisRules {

    private ChassisRules() {}

    static List<Reason> against(ChassisFigures chassis) {
        var bounds = new Bounds();
        if (!WeightRules.SETS.contains(chassis.market())) {
            bounds.refuse(Reason.of("order.marketUnknown", Reason.WORKS_RULE, String.join(", ", WeightRules.SETS))
                    .liftedAt("#market"));
        }
        bounds.within("wheelbaseM", chassis.wheelbaseM(), 1.5, 10)
                .within("secondFrontM", chassis.secondFrontM(), 0.8, 3)
                .within("frontKg", chassis.received().frontKg(), 300, 20_000)
                .within("rearKg", chassis.received().rearKg(), 300, 30_000)
                .within("weighedUncertaintyKg", chassis.received().uncertaintyKg(), 0, 500)
                .within("frontAxleKg", chassis.plates().frontAxleKg(), 500, 15_000)
                .within("rearAxleKg", chassis.plates().rearAxleKg(), 500, 15_000)
                .within("secondRearAxleKg", chassis.plates().secondRearAxleKg(), 500, 15_000)
                .within("grossDesignKg", chassis.plates().grossDesignKg(), 1000, 50_000)
                .within("grossPlatedKg", chassis.plates().grossPlatedKg(), 1000, 50_000)
                .within("steeringPercent", chassis.steeringPercent(), 0, 50)
                .within("driverM", chassis.places().driverM(), -4, 10)
                .within("loadMiddleM", chassis.places().loadMiddleM(), -4, 15)
                .within("loadLengthM", chassis.places().loadLengthM(), 0, 16)
                .within("standingM", chassis.places().standingM(), -4, 15)
                .within("torqueNm", chassis.drive().torqueNm(), 10, 100_000)
                .within("ratio", chassis.drive().ratio(), 0.5, 60)
                .within("efficiencyPercent", chassis.drive().efficiencyPercent(), 50, 100)
                .within("wheelRadiusM", chassis.drive().wheelRadiusM(), 0.2, 0.8)
                .within("cdA", chassis.road().cdA(), 1, 12)
                .within("rolling", chassis.road().rolling(), 0.003, 0.02)
                .within("windowPercent", chassis.store().windowPercent(), 10, 100)
                .within("endOfLifePercent", chassis.store().endOfLifePercent(), 40, 100);
        chassis.secondRear()
                .ifPresent(second -> bounds.within("secondRearM", second.behindM(), 0.8, 3)
                        .within("secondRearPercent", second.sharePercent(), 10, 90));
        chassis.ageing()
                .ifPresent(ageing -> bounds.within("thousandCyclesPercent", ageing.thousandCyclesPercent(), 0, 100)
                        .within("yearPercent", ageing.yearPercent(), 0, 50)
                        .refuse(unsourced(ageing)));
        chassis.tyres().forEach(tyres -> tyres(bounds, chassis, tyres));
        return bounds.against();
    }

    private static List<Reason> unsourced(ChassisFigures.PackAgeing ageing) {
        return ageing.source().isBlank()
                ? List.of(Reason.of("order.ageingUnsourced", Reason.WORKS_RULE).liftedAt("#ageingSource"))
                : List.of();
    }

    private static void tyres(Bounds bounds, ChassisFigures chassis, ChassisFigures.Tyres tyres) {
        String at = "tyre" + tyres.axle().name();
        bounds.within(at + "number", BigDecimal.valueOf(tyres.number()), 1, 8)
                .within(at + "loadKg", tyres.loadKg(), 100, 10_000)
                .within(at + "speedKmh", tyres.speedKmh(), 20, 200);
        if (!chassis.axlePlaces().contains(tyres.axle())) {
            bounds.refuse(Reason.of("order.tyresWithoutAxle", Reason.WORKS_RULE, Bounds.axle(tyres.axle()))
                    .liftedAt("#" + at + "number"));
        }
        if (chassis.tyres().stream()
                        .filter(other -> other.axle() == tyres.axle())
                        .count()
                > 1) {
            bounds.refuse(Reason.of("order.tyresTwice", Reason.WORKS_RULE, Bounds.axle(tyres.axle()))
                    .liftedAt("#" + at + "number"));
        }
    }
}
