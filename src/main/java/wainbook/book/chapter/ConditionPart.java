package wainbook.book.chapter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.book.photograph.Photograph;
import wainbook.book.photograph.Small;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Picture;
import wainbook.book.print.Row;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.page.Words;

/** The condition in which the vehicle was given over: its photographs, small, and those of snags that were put right. */
final class ConditionPart {

    private ConditionPart() {}

    /** A photograph of the handover record, with what it shows. */
    private record Shot(String title, String remark, EvidenceFile file, Entry entry) {}

    static Stream<EvidenceFile> photographs(History history) {
        return shots(history).map(Shot::file);
    }

    private static Stream<Shot> shots(History history) {
        HandoverRecord record = HandoverRecord.of(history);
        return Stream.concat(
                record.pictures().stream().map(ConditionPart::condition),
                record.snags().stream()
                        .flatMap(snag -> snag.closed().stream()
                                .flatMap(closed -> closed.photograph().stream()
                                        .map(file -> new Shot(
                                                Words.of(
                                                        "printed.snagClosed",
                                                        closed.snag(),
                                                        snag.said().defect()),
                                                closed.done(),
                                                file,
                                                snag.ended().orElseThrow())))));
    }

    private static Shot condition(Piece<ConditionPictured> picture) {
        ConditionPictured said = picture.said();
        return new Shot(said.picture() + ". " + said.place(), said.remark(), said.photograph(), picture.entry());
    }

    static Grid grid(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.handoverPicture"), 6),
                        Grid.column(Words.of("printed.pictureShows"), 5),
                        Grid.column(Words.of("printed.handoverPictureFile"), 7),
                        Grid.column(Words.of("printed.entry"), 2)),
                shots(material.history()).map(shot -> row(material, shot)).toList());
    }

    private static Row row(Material material, Shot shot) {
        Optional<String> name = material.photographs()
                .of(shot.entry().number(), shot.file().sha256())
                .filter(Photograph::carried)
                .map(Photograph::name);
        return Row.of(
                Optional.ofNullable(material.small().get(shot.file().sha256()))
                        .map(small -> Cell.of(picture(small, shot, name)))
                        .orElseGet(() -> Cell.of(Words.of("printed.pictureNotDrawn"), "quiet")),
                Cell.of(shot.title())
                        .and(shot.remark(), "quiet small")
                        .and(material.formats().moment(shot.entry().moment().at()), "quiet small"),
                Cell.of(shot.file().sha256(), "fixed wrap").and(name.orElse(""), "file"),
                Cell.of(String.valueOf(shot.entry().number()), "fixed"));
    }

    private static Picture picture(Small small, Shot shot, Optional<String> name) {
        String shows =
                shot.remark().isBlank() ? shot.title() : Words.of("printed.saidAndValue", shot.title(), shot.remark());
        return new Picture(
                small.source(), Words.of("printed.photographOf", shows), small.width(), small.height(), name);
    }
}
