package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.List;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Row;
import wainbook.order.calibration.Comparison;
import wainbook.page.Words;

/** How the vehicle was asked to drive, and the calibration that it has. */
final class CalibrationPart {

    private CalibrationPart() {}

    /** Which calibration is in the vehicle, where one was read. */
    static List<Fact> facts(Material material) {
        Comparison compared = material.calibration();
        return compared.read().calibration().stream()
                .map(name -> Front.fact("printed.calibrationRead", name, "fixed"))
                .toList();
    }

    /** Without rows where nothing was asked. */
    static Grid values(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("order.wishSetting"), 10),
                        Grid.figures(Words.of("order.wishAsked"), 6),
                        Grid.figures(Words.of("order.wishReleased"), 5),
                        Grid.figures(Words.of("order.wishRead"), 5),
                        Grid.column(Words.of("order.wishOutcome"), 8)),
                material.calibration().lines().stream()
                        .map(line -> Row.of(
                                Cell.of(Words.of(
                                        "order.setting." + line.wish().setting().name())),
                                Cell.of(line.wish().value().toPlainString() + " ± "
                                        + line.wish().tolerance().toPlainString() + " "
                                        + line.wish().setting().unit()),
                                Cell.of(line.released()
                                        .map(BigDecimal::toPlainString)
                                        .orElse("–")),
                                Cell.of(line.read()
                                        .map(BigDecimal::toPlainString)
                                        .orElse("–")),
                                Cell.of(Words.of(
                                        "order.wishVerdict." + line.verdict().name()))))
                        .toList());
    }
}
