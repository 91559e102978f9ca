package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.station.StationSaying.Guard;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.station.joint.RecheckInWords;

/** Every tightening with what each fastener was brought to, and every check of one afterwards. */
final class JointsChapter {

    private JointsChapter() {}

    static Chapter of(Material material) {
        return new Manuscript("joints", Words.of("printed.joints"))
                .text(Words.of("printed.jointsIntro"))
                .grid(grid(material), Words.of("printed.noJoints"))
                .end();
    }

    private static Grid grid(Material material) {
        Set<UUID> voided = material.history()
                .saying(Voided.class)
                .map(entry -> ((Voided) entry.saying()).entry())
                .collect(Collectors.toSet());
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.joint"), 6),
                        Grid.column(Words.of("printed.limit"), 3),
                        Grid.column(Words.of("printed.eachFastener"), 5),
                        Grid.column(Words.of("printed.tool"), 3),
                        Grid.column(Words.of("printed.came"), 3)),
                material.history().entries().stream()
                        .flatMap(entry ->
                                row(material, entry).map(row -> voided.contains(entry.id()) ? row.struck() : row))
                        .toList());
    }

    private static Stream<Row> row(Material material, Entry entry) {
        if (entry.saying() instanceof Tightened said) {
            return Stream.of(Row.of(
                    joint(material, said.joint(), said, said.jointClass().name()),
                    Cell.of(Words.of(
                                    "printed.torqueLimits",
                                    said.torque().limitsNm().lower().toPlainString(),
                                    said.torque().limitsNm().upper().toPlainString()))
                            .and(
                                    said.angle()
                                            .map(angle -> Words.of(
                                                    "printed.angleLimits",
                                                    angle.degrees().lower().toPlainString(),
                                                    angle.degrees().upper().toPlainString()))
                                            .orElse(""),
                                    "")
                            .and(said.guard().map(JointsChapter::guard).orElse(""), "quiet small"),
                    Cell.of(figures(said.boltsNm(), "Nm")).and(figures(said.anglesDeg(), "°"), ""),
                    tool(said),
                    came(entry, said)));
        }
        return entry.saying() instanceof Rechecked said
                ? Stream.of(Row.of(
                        joint(material, said.joint(), said, said.jointClass().name()),
                        Cell.of(Words.of("printed.checkedAgain")),
                        Cell.of(RecheckInWords.figures(said)),
                        tool(said),
                        came(entry, said)))
                : Stream.empty();
    }

    private static Cell joint(Material material, String code, Result said, String jointClass) {
        return Cell.of(material.names().item(said.about()))
                .and(
                        Words.of(
                                "printed.jointOf",
                                code,
                                jointClass,
                                material.names().stage(said.about().stage())),
                        "quiet small")
                .and(material.joint(code).flatMap(Joint::thread).orElse(""), "quiet small");
    }

    private static String guard(Guard guard) {
        return Words.of(
                "printed.guard",
                guard.toolPercent().toPlainString(),
                guard.decisionFactor().toPlainString());
    }

    private static Cell tool(Result said) {
        return said.basis()
                .used()
                .map(used -> Cell.of(used.instrument())
                        .and(Words.of("printed.dueThen", wainbook.page.Formats.date(used.due())), "quiet small"))
                .orElseGet(() -> Cell.of("–"));
    }

    private static Cell came(Entry entry, Result said) {
        boolean passed = said.verdict() == Verdict.PASS;
        return Cell.of(Words.of(passed ? "book.pass" : "book.fail"), passed ? "" : "danger")
                .and(VehicleChapter.entry(entry), "fixed");
    }

    private static String figures(List<BigDecimal> figures, String unit) {
        return figures.isEmpty()
                ? ""
                : figures.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" · ")) + " " + unit;
    }
}
