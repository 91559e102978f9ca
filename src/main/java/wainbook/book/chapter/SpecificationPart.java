package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Row;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.Specification;
import wainbook.order.specification.Specification.Said;
import wainbook.page.Words;

/** What was specified: packs, what was promised of them, and the loads that were predicted; the last choice counts. */
final class SpecificationPart {

    private SpecificationPart() {}

    static Optional<Said<Chosen>> standing(Material material) {
        return Specification.of(material.history()).standing();
    }

    static List<Fact> facts(Material material) {
        return standing(material).stream().flatMap(said -> facts(said).stream()).toList();
    }

    private static List<Fact> facts(Said<Chosen> said) {
        Chosen chosen = said.what();
        Chosen.Figures figures = chosen.figures();
        return List.of(
                Front.fact(
                        "printed.specified",
                        Words.of("printed.specifiedPacks", chosen.packs(), chosen.packType(), said.number()),
                        ""),
                Front.fact("printed.specifiedRangeNew", plain(figures.rangeNewKm()) + " km", ""),
                Front.fact("printed.specifiedRangeAtEnd", plain(figures.rangeAtEndKm()) + " km", ""),
                Front.fact("printed.specifiedOdds", plain(figures.oddsAtEndPercent()) + " %", ""),
                Front.fact("printed.specifiedUse", plain(figures.kwhPerKm()) + " kWh/km", ""),
                Front.fact("printed.specifiedPayload", plain(figures.payloadLimitKg()) + " kg", ""),
                Front.fact("printed.specifiedCharge", plain(figures.chargeHours()) + " h", ""));
    }

    /** Without rows where nothing was specified. */
    static Grid predicted(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.axle"), 8),
                        Grid.figures(Words.of("printed.predicted"), 6),
                        Grid.figures(Words.of("printed.predictedUncertainty"), 6)),
                standing(material).stream()
                        .flatMap(said -> said.what().predicted().stream())
                        .map(axle -> Row.of(
                                Cell.of(Words.of("printed.axleNumber", axle.axle())),
                                Cell.of(plain(axle.kg()) + " kg"),
                                Cell.of("± " + plain(axle.uncertaintyKg()) + " kg")))
                        .toList());
    }

    private static String plain(BigDecimal figure) {
        return figure.toPlainString();
    }
}
