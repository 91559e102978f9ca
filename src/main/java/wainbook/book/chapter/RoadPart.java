package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Row;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.road.RoadUse;
import wainbook.page.Words;

/** Releases for the road and drives, as they were said. */
final class RoadPart {

    private RoadPart() {}

    static Grid releases(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.roadRelease"), 5),
                        Grid.column(Words.of("printed.roadDriver"), 3),
                        Grid.column(Words.of("printed.roadUnder"), 9),
                        Grid.column(Words.of("printed.entry"), 3)),
                RoadUse.of(material.history()).releases().stream()
                        .map(release -> Row.of(
                                Cell.of(Words.of("printed.roadNumber", release.number()))
                                        .and(
                                                Words.of(
                                                        "printed.roadSigned",
                                                        release.who(),
                                                        material.formats().moment(release.at())),
                                                "quiet small"),
                                Cell.of(release.said().driver()),
                                Cell.of(release.said().plates() + ", "
                                                + release.said().insurance())
                                        .and(String.join(", ", release.said().documents()), "quiet small"),
                                Cell.of(String.valueOf(release.entry()), "fixed")))
                        .toList());
    }

    static Grid drives(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.roadDrive"), 7),
                        Grid.figures(Words.of("printed.roadKm"), 2),
                        Grid.figures(Words.of("printed.roadLoad"), 3),
                        Grid.column(Words.of("printed.came"), 6),
                        Grid.column(Words.of("printed.entry"), 2)),
                RoadUse.of(material.history()).drives().stream()
                        .map(drive -> Row.of(
                                Cell.of(drive.said().route())
                                        .and(material.formats().moment(drive.at()), "quiet small"),
                                Cell.of(drive.said().km() + " km"),
                                Cell.of(drive.said().loadKg() + " kg"),
                                Cell.of(Words.of(drive.said().fit() ? "printed.roadFit" : "printed.roadUnfit"))
                                        .and(drive.said().defects(), "")
                                        .and(temperatures(drive.said()), "quiet small"),
                                Cell.of(String.valueOf(drive.entry()), "fixed")))
                        .toList());
    }

    private static String temperatures(RoadDriven said) {
        return Stream.of(
                        shown("printed.roadPacks", said.packsDegC()),
                        shown("printed.roadMotor", said.driveDegC()),
                        shown("printed.roadOutside", said.outsideDegC()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    private static Optional<String> shown(String key, Optional<BigDecimal> degC) {
        return degC.map(value -> Words.of(key, value.toPlainString()));
    }
}
