package wainbook.quality.containment.page.view;

import java.math.BigDecimal;
import java.util.List;
import wainbook.quality.QualitySaying.Doubted;

/** A reading as a line of a spreadsheet; people by their number, since a file leaves the works. */
public final class ReadingCells {

    private ReadingCells() {}

    public static List<String> of(VehicleView vehicle, ReadingView one) {
        Doubted said = one.said();
        return List.of(
                vehicle.number(),
                vehicle.order().ordered().operator(),
                vehicle.phase(),
                String.valueOf(said.number()),
                said.place() == 0 ? "" : String.valueOf(said.place()),
                said.at().toString(),
                said.who(),
                said.item(),
                said.gravity().name(),
                text(said.reading()),
                text(said.lower()),
                text(said.upper()),
                said.unit(),
                said.verdict().name(),
                said.ground().name(),
                said.worked().map(worked -> worked.best().toPlainString()).orElse(""),
                said.worked().map(worked -> worked.even().toPlainString()).orElse(""),
                said.worked().map(worked -> worked.worst().toPlainString()).orElse(""),
                said.worked().map(worked -> worked.low().toPlainString()).orElse(""),
                said.worked().map(worked -> worked.high().toPlainString()).orElse(""),
                said.voided() ? "voided" : "",
                one.reading()
                        .decision()
                        .map(decision -> decision.disposition().name())
                        .orElse(""));
    }

    private static String text(java.util.Optional<BigDecimal> value) {
        return value.map(BigDecimal::toPlainString).orElse("");
    }
}
