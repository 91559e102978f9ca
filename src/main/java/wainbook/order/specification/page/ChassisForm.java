package wainbook.order.specification.page;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import wainbook.order.WorkOrder;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.limit.Body;
import wainbook.order.specification.Weighings;
import wainbook.page.Filled;
import wainbook.page.Words;

/** A vehicle as a form writes and reads it. */
final class ChassisForm {

    private ChassisForm() {}

    /** What is known already: facts of the order, its survey, and the last vehicle of the same kind. */
    static Filled fresh(
            Filled filled, WorkOrder order, Optional<Weighings.Received> received, Optional<ChassisFigures> alike) {
        boolean bus = bus(order);
        Filled form = DutyForm.all(
                filled,
                Map.of(
                        "steeringPercent", bus ? "25" : "20",
                        "driverM", bus ? "-0.6" : "-0.35",
                        "loadLengthM", "0",
                        "efficiencyPercent", "95",
                        "windowPercent", "80",
                        "endOfLifePercent", "80",
                        "cdA", bus ? "4.9" : "6.0",
                        "rolling", bus ? "0.0065" : "0.007",
                        "weighedUncertaintyKg", "20"));
        if (alike.isPresent()) {
            form = TyreFields.open(of(form, alike.get()))
                    .with("frontKg", "")
                    .with("rearKg", "")
                    .with("weighedFrom", "")
                    .with("grossPlatedKg", "");
        }
        form = form.with("body", body(order).name());
        form = fact(form, order, "market", "market");
        form = fact(form, order, "gross_design", "grossDesignKg");
        form = fact(form, order, "other_engine_on_board", "otherEngine");
        return received.isPresent()
                ? form.with("frontKg", DutyForm.plain(received.get().frontKg()))
                        .with("rearKg", DutyForm.plain(received.get().rearKg()))
                        .with("weighedFrom", received.get().item())
                : form;
    }

    private static Filled fact(Filled form, WorkOrder order, String fact, String field) {
        String stated = order.facts().get(fact);
        return stated == null ? form : form.with(field, stated);
    }

    static boolean bus(WorkOrder order) {
        return order.facts().getOrDefault("category", "").startsWith("M");
    }

    private static Body body(WorkOrder order) {
        if (!bus(order)) {
            return Body.GOODS;
        }
        return "true".equals(order.facts().get("bus_articulated")) ? Body.ARTICULATED_BUS : Body.BUS;
    }

    static Filled of(Filled filled, ChassisFigures figures) {
        Filled form = aged(TyreFields.of(filled, figures.tyres()), figures)
                .with("body", figures.body().name())
                .with("market", figures.market())
                .with("wheelbaseM", DutyForm.plain(figures.wheelbaseM()))
                .with("secondFrontM", perhaps(figures.secondFrontM()))
                .with("twinAir", truth(figures.twinAir()))
                .with("otherEngine", truth(figures.otherEngine()))
                .with("extraMassKg", figures.extraMassKg().map(String::valueOf).orElse(""))
                .with("frontKg", DutyForm.plain(figures.received().frontKg()))
                .with("rearKg", DutyForm.plain(figures.received().rearKg()))
                .with("weighedUncertaintyKg", DutyForm.plain(figures.received().uncertaintyKg()))
                .with("weighedFrom", figures.received().from())
                .with("frontAxleKg", DutyForm.plain(figures.plates().frontAxleKg()))
                .with("rearAxleKg", DutyForm.plain(figures.plates().rearAxleKg()))
                .with("secondRearAxleKg", perhaps(figures.plates().secondRearAxleKg()))
                .with("grossDesignKg", DutyForm.plain(figures.plates().grossDesignKg()))
                .with("grossPlatedKg", perhaps(figures.plates().grossPlatedKg()))
                .with("steeringPercent", DutyForm.plain(figures.steeringPercent()))
                .with("driverM", DutyForm.plain(figures.places().driverM()))
                .with("loadMiddleM", DutyForm.plain(figures.places().loadMiddleM()))
                .with("loadLengthM", DutyForm.plain(figures.places().loadLengthM()))
                .with("standingM", perhaps(figures.places().standingM()))
                .with("torqueNm", DutyForm.plain(figures.drive().torqueNm()))
                .with("ratio", DutyForm.plain(figures.drive().ratio()))
                .with("efficiencyPercent", DutyForm.plain(figures.drive().efficiencyPercent()))
                .with("wheelRadiusM", DutyForm.plain(figures.drive().wheelRadiusM()))
                .with("cdA", DutyForm.plain(figures.road().cdA()))
                .with("rolling", DutyForm.plain(figures.road().rolling()))
                .with("windowPercent", DutyForm.plain(figures.store().windowPercent()))
                .with("endOfLifePercent", DutyForm.plain(figures.store().endOfLifePercent()));
        return figures.secondRear()
                .map(second -> form.with("secondRearM", DutyForm.plain(second.behindM()))
                        .with("secondRearPercent", DutyForm.plain(second.sharePercent()))
                        .with("secondRearDriven", "" + second.driven())
                        .with("secondRearLifts", "" + second.lifts()))
                .orElse(form);
    }

    static ChassisFigures read(Figures sent) {
        return new ChassisFigures(
                sent.choice("body", Body.values()),
                sent.text("market"),
                sent.figure("wheelbaseM"),
                sent.perhaps("secondFrontM"),
                sent.blank("secondRearM")
                        ? Optional.empty()
                        : Optional.of(new ChassisFigures.SecondRear(
                                sent.figure("secondRearM"),
                                sent.figure("secondRearPercent"),
                                sent.truth("secondRearDriven").orElse(false),
                                sent.truth("secondRearLifts").orElse(false))),
                sent.truth("twinAir"),
                sent.truth("otherEngine"),
                sent.blank("extraMassKg") ? Optional.empty() : Optional.of(sent.whole("extraMassKg")),
                new ChassisFigures.Received(
                        sent.figure("frontKg"),
                        sent.figure("rearKg"),
                        sent.figure("weighedUncertaintyKg"),
                        sent.blank("weighedFrom") ? Words.of("order.weighedTyped") : sent.text("weighedFrom")),
                new ChassisFigures.Plates(
                        sent.figure("frontAxleKg"),
                        sent.figure("rearAxleKg"),
                        sent.perhaps("secondRearAxleKg"),
                        sent.figure("grossDesignKg"),
                        sent.perhaps("grossPlatedKg")),
                sent.figure("steeringPercent"),
                new ChassisFigures.Places(
                        sent.figure("driverM"),
                        sent.figure("loadMiddleM"),
                        sent.figure("loadLengthM"),
                        sent.perhaps("standingM")),
                new ChassisFigures.Drive(
                        sent.figure("torqueNm"),
                        sent.figure("ratio"),
                        sent.figure("efficiencyPercent"),
                        sent.figure("wheelRadiusM")),
                new ChassisFigures.Road(sent.figure("cdA"), sent.figure("rolling")),
                new ChassisFigures.Store(sent.figure("windowPercent"), sent.figure("endOfLifePercent")),
                ageing(sent),
                TyreFields.read(sent));
    }

    private static Optional<ChassisFigures.PackAgeing> ageing(Figures sent) {
        boolean none = sent.blank("thousandCyclesPercent") && sent.blank("yearPercent") && sent.blank("ageingSource");
        return none
                ? Optional.empty()
                : Optional.of(new ChassisFigures.PackAgeing(
                        sent.figure("thousandCyclesPercent"), sent.figure("yearPercent"), sent.text("ageingSource")));
    }

    private static Filled aged(Filled form, ChassisFigures figures) {
        return figures.ageing()
                .map(ageing -> form.with("thousandCyclesPercent", DutyForm.plain(ageing.thousandCyclesPercent()))
                        .with("yearPercent", DutyForm.plain(ageing.yearPercent()))
                        .with("ageingSource", ageing.source()))
                .orElse(form);
    }

    private static String perhaps(Optional<BigDecimal> value) {
        return value.map(DutyForm::plain).orElse("");
    }

    private static String truth(Optional<Boolean> value) {
        return value.map(String::valueOf).orElse("");
    }
}
