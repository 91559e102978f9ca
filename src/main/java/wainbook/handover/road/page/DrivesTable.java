package wainbook.handover.road.page;

import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.line.road.RoadUse.Drive;
import wainbook.page.Csv;
import wainbook.page.Words;

/** The log of a vehicle's drives, for a spreadsheet. */
final class DrivesTable {

    private DrivesTable() {}

    static Response file(RoadView view) {
        return Csv.file(
                "drives-" + view.number(),
                Arrays.asList(Words.of("handover.roadCsvHeader").split(";")),
                view.use().drives().stream().map(DrivesTable::cells).toList());
    }

    private static List<String> cells(Drive drive) {
        var said = drive.said();
        return List.of(
                drive.at().toString(),
                String.valueOf(said.release()),
                said.driver(),
                said.route(),
                String.valueOf(said.loadKg()),
                String.valueOf(said.fromKm()),
                String.valueOf(said.toKm()),
                cell(said.packsDegC()),
                cell(said.driveDegC()),
                cell(said.outsideDegC()),
                said.faults(),
                said.defects(),
                Words.of(said.fit() ? "handover.roadFit" : "handover.roadUnfit"));
    }

    private static String cell(Optional<BigDecimal> value) {
        return value.map(BigDecimal::toPlainString).orElse("");
    }
}
