package wainbook.book.chapter;

import java.util.List;
import java.util.Optional;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.hold.HoldInWords;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;

/** What was not as it should be, and what was decided about it. */
final class MattersChapter {

    private MattersChapter() {}

    static Chapter of(Material material) {
        return new Manuscript("matters", Words.of("printed.matters"))
                .part("nonconformities", Words.of("printed.nonconformities"))
                .grid(nonconformities(material), Words.of("printed.noNonconformities"))
                .part("holds", Words.of("printed.holds"))
                .grid(holds(material), Words.of("printed.noHolds"))
                .part("doubts", Words.of("printed.doubts"))
                .grid(doubts(material), Words.of("printed.noDoubts"))
                .end();
    }

    private static Grid nonconformities(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.number"), 2),
                        Grid.column(Words.of("printed.what"), 8),
                        Grid.column(Words.of("printed.decision"), 7),
                        Grid.column(Words.of("printed.entries"), 3)),
                Nonconformities.of(material.history()).all().stream()
                        .map(one -> nonconformity(material, one))
                        .toList());
    }

    private static Row nonconformity(Material material, Nonconformity one) {
        return Row.of(
                Cell.of(String.valueOf(one.number()), "strong"),
                Cell.of(one.opened().what())
                        .and(
                                Words.of(
                                        "printed.openedBy",
                                        one.causeInWords(),
                                        material.names().stage(one.opened().stage()),
                                        one.opened().item().orElse("–"),
                                        one.openedBy(),
                                        material.formats().moment(one.since())),
                                "quiet small"),
                one.disposed()
                        .map(said -> Cell.of(
                                        Words.of("matter.disposition."
                                                + said.disposition().name()),
                                        "strong")
                                .and(said.because(), "")
                                .and(Words.of("printed.by", one.disposedBy().orElse("–")), "quiet small"))
                        .orElseGet(() -> Cell.of(Words.of("printed.undecided"), "danger")),
                Cell.of(
                        one.openedAt()
                                + one.disposed()
                                        .map(said -> ", " + one.disposedAt())
                                        .orElse(""),
                        "fixed"));
    }

    private static Grid holds(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.number"), 2),
                        Grid.column(Words.of("printed.what"), 8),
                        Grid.column(Words.of("printed.released"), 7),
                        Grid.column(Words.of("printed.entry"), 3)),
                material.history()
                        .saying(Held.class)
                        .map(entry -> {
                            HoldInWords hold = HoldInWords.of(entry);
                            return Row.of(
                                    Cell.of(String.valueOf(hold.hold()), "strong"),
                                    Cell.of(hold.reason())
                                            .and(
                                                    Words.of(
                                                            "printed.heldBy",
                                                            hold.kind(),
                                                            hold.stops(),
                                                            hold.who(),
                                                            material.formats().moment(hold.since())),
                                                    "quiet small"),
                                    released(material, hold.hold()),
                                    Cell.of(String.valueOf(entry.number()), "fixed"));
                        })
                        .toList());
    }

    private static Cell released(Material material, int hold) {
        return material.history()
                .saying(HoldReleased.class)
                .filter(entry -> ((HoldReleased) entry.saying()).hold() == hold)
                .findFirst()
                .map(entry -> Cell.of(((HoldReleased) entry.saying()).reason())
                        .and(
                                Words.of(
                                        "printed.byAt",
                                        entry.moment().who(),
                                        material.formats().moment(entry.moment().at())),
                                "quiet small"))
                .orElseGet(() -> Cell.of(Words.of("printed.inForce"), "danger"));
    }

    private static Grid doubts(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.containment"), 4),
                        Grid.column(Words.of("printed.what"), 7),
                        Grid.column(Words.of("printed.decision"), 9)),
                VehicleDoubts.of(material.history()).all().stream()
                        .map(doubt -> doubt(material, doubt))
                        .toList());
    }

    private static Row doubt(Material material, VehicleDoubt doubt) {
        return Row.of(
                Cell.of(doubt.containment(), "strong").and(material.formats().moment(doubt.since()), "quiet small"),
                Cell.of(Words.of(
                        "printed.doubted",
                        doubt.readings().size(),
                        doubt.about().code(),
                        doubt.count(Sureness.SURE_OUT),
                        doubt.count(Sureness.POSSIBLE),
                        doubt.count(Sureness.SAFE))),
                Cell.of(
                                doubt.open().isEmpty()
                                        ? Words.of("printed.doubtsDecided")
                                        : Words.of(
                                                "printed.doubtsOpen",
                                                doubt.open().size()))
                        .and(
                                doubt.readings().stream()
                                        .map(VehicleDoubt.Reading::decision)
                                        .flatMap(Optional::stream)
                                        .map(said -> said.reason())
                                        .distinct()
                                        .reduce((former, latter) -> former + " " + latter)
                                        .orElse(""),
                                ""));
    }
}
