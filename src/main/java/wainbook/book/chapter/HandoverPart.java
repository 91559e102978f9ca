package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Cell;
import wainbook.book.print.Grid;
import wainbook.book.print.Row;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.page.Formats;
import wainbook.page.Words;

/** How the vehicle was given to its operator. People of the operator are the numbers by which the record calls them. */
final class HandoverPart {

    private HandoverPart() {}

    static List<Fact> facts(Material material) {
        HandoverRecord record = HandoverRecord.of(material.history());
        var facts = new ArrayList<Fact>();
        record.state().map(Piece::said).ifPresent(said -> {
            facts.add(Front.fact("printed.handoverOdometer", Words.of("book.km", said.odometerKm()), ""));
            facts.add(Front.fact("printed.handoverCharge", said.chargePercent() + " %", ""));
            facts.add(Front.fact("printed.handoverBay", said.bay(), ""));
        });
        record.things()
                .map(Piece::said)
                .ifPresent(said -> facts.add(Front.fact(
                        "printed.handoverThings",
                        said.things().isEmpty()
                                ? Words.of("handover.recordNothingGiven")
                                : said.things().stream()
                                        .map(thing -> thing.count() + " × " + thing.thing())
                                        .collect(Collectors.joining(", ")),
                        "")));
        record.omitted()
                .ifPresent(left -> facts.add(Front.fact(
                        "printed.handoverInstruction",
                        Words.of("handover.recordOmitted", left.said().reason()),
                        "")));
        record.warranty()
                .map(Piece::said)
                .ifPresent(said -> facts.add(Front.fact(
                        "printed.warranty",
                        Words.of("printed.warrantyFrom", Formats.date(said.from()), said.odometerKm(), said.covers()),
                        "")));
        record.lastReceipt()
                .ifPresent(
                        receipt -> facts.add(Front.fact("printed.receipt", receipt.printed(material.formats()), "")));
        return facts;
    }

    static Grid snags(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.handoverSnag"), 8),
                        Grid.column(Words.of("printed.handoverRemedy"), 9),
                        Grid.column(Words.of("printed.entry"), 3)),
                HandoverRecord.of(material.history()).snags().stream()
                        .map(HandoverPart::snag)
                        .toList());
    }

    private static Row snag(Piece<SnagAgreed> snag) {
        SnagAgreed said = snag.said();
        String owner = said.owner().orElseGet(() -> Words.of("handover.owner.OPERATOR"));
        return Row.of(
                Cell.of(said.snag() + ". " + said.defect())
                        .and(said.place() + ", " + said.with().token(), "quiet small"),
                Cell.of(said.remedy())
                        .and(Words.of("printed.handoverDue", owner, Formats.date(said.dueOn())), "quiet small")
                        .and(
                                snag.closed()
                                        .map(closed -> Words.of("handover.recordSnagDone", closed.done()))
                                        .orElseGet(() -> Words.of("handover.recordSnagStands")),
                                ""),
                Cell.of(String.valueOf(snag.entry().number()), "fixed"));
    }

    static Grid instructions(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.handoverInstruction"), 7),
                        Grid.column(Words.of("printed.handoverTopics"), 10),
                        Grid.column(Words.of("printed.entry"), 3)),
                HandoverRecord.of(material.history()).instructions().stream()
                        .map(HandoverPart::instruction)
                        .toList());
    }

    private static Row instruction(Piece<Instructed> one) {
        Instructed said = one.said();
        return Row.of(
                Cell.of(Words.of("printed.handoverInstructed", Formats.date(said.on()), said.by()))
                        .and(
                                Words.of("printed.handoverPeople", tokens(said.drivers()), tokens(said.workshop())),
                                "quiet small"),
                Cell.of(String.join(", ", said.topics())),
                Cell.of(String.valueOf(one.entry().number()), "fixed"));
    }

    private static String tokens(List<Outsider> people) {
        return people.isEmpty() ? "–" : people.stream().map(Outsider::token).collect(Collectors.joining(", "));
    }
}
