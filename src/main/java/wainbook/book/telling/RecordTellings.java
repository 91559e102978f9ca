package wainbook.book.telling;

import java.util.List;
import java.util.stream.Collectors;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.InstructionOmitted;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.PartWithdrawn;
import wainbook.handover.record.RecordSaying.ReceiptMissing;
import wainbook.handover.record.RecordSaying.ReceiptSigned;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.handover.record.RecordSaying.StateRead;
import wainbook.handover.record.RecordSaying.ThingsListed;
import wainbook.handover.record.RecordSaying.WarrantyBegun;
import wainbook.page.Formats;
import wainbook.page.Words;

/** How a handover record is told. People of others are tokens. */
final class RecordTellings {

    private RecordTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                StateRead.class,
                (said, names) -> Told.of(
                        Words.of("book.handoverState", said.bay(), said.chargePercent()),
                        Words.of("book.km", said.odometerKm())));
        tellings.on(
                ConditionPictured.class,
                (said, names) ->
                        Told.of(Words.of("book.conditionPictured", said.picture(), said.place(), said.remark())));
        tellings.on(
                ThingsListed.class,
                (said, names) ->
                        Told.of(Words.of("book.thingsListed", said.things().size()), things(said)));
        tellings.on(
                SnagAgreed.class,
                (said, names) -> Told.of(Words.of(
                        "book.snagAgreed",
                        said.snag(),
                        said.defect(),
                        said.place(),
                        said.with().token(),
                        said.remedy(),
                        said.owner().map(names::person).orElseGet(() -> Words.of("handover.owner.OPERATOR")),
                        Formats.date(said.dueOn()))));
        tellings.on(SnagClosed.class, (said, names) -> Told.of(Words.of("book.snagClosed", said.snag(), said.done())));
        tellings.on(
                Instructed.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.instructed",
                                tokens(said.drivers()),
                                tokens(said.workshop()),
                                names.person(said.by()),
                                Formats.date(said.on())),
                        String.join(", ", said.topics())));
        tellings.on(
                InstructionOmitted.class, (said, names) -> Told.of(Words.of("book.instructionOmitted", said.reason())));
        tellings.on(
                WarrantyBegun.class,
                (said, names) -> Told.of(
                        Words.of("book.warrantyBegun", Formats.date(said.from()), said.covers()),
                        Words.of("book.km", said.odometerKm())));
        tellings.on(
                PartWithdrawn.class,
                (said, names) -> Told.of(Words.of(
                        "book.recordWithdrawn",
                        Words.of("handover.recordSort." + said.sort().name()),
                        said.piece(),
                        said.reason())));
        tellings.on(
                ReceiptSigned.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.receiptSigned",
                                said.receipt(),
                                said.receiver().token(),
                                said.role()),
                        Words.of("handover.recordManner." + said.manner().name())));
        tellings.on(
                ReceiptMissing.class,
                (said, names) -> Told.of(Words.of(
                        "book.receiptMissing",
                        said.receipt(),
                        Words.of("handover.recordAbsence." + said.absence().name()),
                        said.reason(),
                        names.person(said.witness()))));
    }

    private static String things(ThingsListed said) {
        return said.things().stream()
                .map(thing -> thing.count() + " × " + thing.thing())
                .collect(Collectors.joining(", "));
    }

    private static String tokens(List<Outsider> people) {
        return people.isEmpty() ? "–" : people.stream().map(Outsider::token).collect(Collectors.joining(", "));
    }
}
