package wainbook.handover.carbon.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonStating;
import wainbook.ledger.History;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.Specification;
import wainbook.page.Filled;
import wainbook.process.ComponentLibrary;
import wainbook.process.component.Component;

/** What the form starts from: the statement that stands, else the specification. Litres are the operator's own and never offered. */
final class CarbonOffer {

    private CarbonOffer() {}

    static Filled of(History order, History works) {
        Optional<CarbonStated> stated = CarbonStating.last(order);
        return stated.isPresent()
                ? of(stated.get())
                : Specification.of(order)
                        .standing()
                        .map(said -> of(said.what(), ComponentLibrary.of(works)))
                        .orElseGet(CarbonOffer::usual);
    }

    private static Filled of(CarbonStated stated) {
        Basis basis = stated.basis();
        Filled filled = Filled.fresh()
                .with("annualKm", String.valueOf(basis.annualKm()))
                .with("years", String.valueOf(basis.years()))
                .with("packKwh", basis.packKwh().toPlainString())
                .with("gridFallPercent", basis.gridFallPercent().toPlainString())
                .with("year", String.valueOf(stated.year()));
        filled = range(filled, "litres", basis.litresPer100Km());
        filled = range(filled, "kwh", basis.kwhPerKm());
        filled = range(filled, "charging", basis.chargingPercent());
        return range(filled, "pack", basis.packKgPerKwh());
    }

    private static Filled of(Chosen chosen, ComponentLibrary library) {
        Optional<BigDecimal> one =
                library.packs(chosen.packType()).stream().findFirst().flatMap(Component::nominalKwh);
        return usual().with("kwhMid", chosen.figures().kwhPerKm().toPlainString())
                .with(
                        "packKwh",
                        one.map(kwh -> kwh.multiply(BigDecimal.valueOf(chosen.packs()))
                                        .stripTrailingZeros()
                                        .toPlainString())
                                .orElse(""));
    }

    private static Filled usual() {
        CarbonSets.Packs packs = CarbonSets.loaded().packs();
        Filled filled = Filled.fresh()
                .with("gridFallPercent", "0")
                .with(
                        "year",
                        CarbonSets.loaded()
                                .newestWhole()
                                .map(set -> String.valueOf(set.year()))
                                .orElse(""));
        return range(filled, "pack", List.of(packs.low(), packs.mid(), packs.high()));
    }

    private static Filled range(Filled filled, String name, List<BigDecimal> range) {
        return filled.with(name + "Low", range.get(0).toPlainString())
                .with(name + "Mid", range.get(1).toPlainString())
                .with(name + "High", range.get(2).toPlainString());
    }
}
