package wainbook.handover.issue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordRules;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.page.Formats;
import wainbook.page.Words;

/** What the handover record says; people of others are tokens. */
final class HandoverFigures {

    private HandoverFigures() {}

    static Map<String, Object> of(RecordRules rules, Formats format) {
        HandoverRecord record = rules.record();
        return Map.ofEntries(
                Map.entry(
                        "odometerKm",
                        text(record.state().map(state -> state.said().odometerKm()))),
                Map.entry(
                        "chargePercent",
                        text(record.state().map(state -> state.said().chargePercent()))),
                Map.entry("bay", text(record.state().map(state -> state.said().bay()))),
                Map.entry(
                        "readAt",
                        text(record.state()
                                .map(state ->
                                        format.moment(state.entry().moment().at())))),
                Map.entry("pictures", pictures(record)),
                Map.entry(
                        "snags",
                        record.snags().stream().map(HandoverFigures::snag).toList()),
                Map.entry("things", things(record)),
                Map.entry("instructions", instructions(record)),
                Map.entry(
                        "notInstructed",
                        text(record.omitted().map(left -> left.said().reason()))),
                Map.entry(
                        "warrantyFrom",
                        text(record.warranty()
                                .map(begun -> Formats.date(begun.said().from())))),
                Map.entry(
                        "warrantyKm",
                        text(record.warranty().map(begun -> begun.said().odometerKm()))),
                Map.entry(
                        "warrantyCovers",
                        text(record.warranty().map(begun -> begun.said().covers()))),
                Map.entry(
                        "receipt",
                        rules.counting()
                                .map(receipt -> receipt.printed(format))
                                .orElseGet(() -> Words.of("handover.receiptNone"))));
    }

    /** What a document needs: a record that lacks nothing but its receipt. */
    static String complete(RecordRules rules) {
        return rules.missing().isEmpty() ? "complete" : "";
    }

    private static String text(java.util.Optional<?> value) {
        return value.map(String::valueOf).orElse("");
    }

    private static List<Map<String, Object>> pictures(HandoverRecord record) {
        return record.pictures().stream()
                .map(Piece::said)
                .map(said -> Map.<String, Object>of(
                        "number", said.picture(),
                        "place", said.place(),
                        "remark", said.remark(),
                        "sha256", said.photograph().sha256().substring(0, 16)))
                .toList();
    }

    private static List<Map<String, Object>> things(HandoverRecord record) {
        return record.things().stream()
                .flatMap(list -> list.said().things().stream())
                .map(thing -> Map.<String, Object>of("what", thing.thing(), "count", thing.count()))
                .toList();
    }

    private static Map<String, Object> snag(Piece<SnagAgreed> piece) {
        SnagAgreed said = piece.said();
        return Map.of(
                "number", said.snag(),
                "defect", said.defect(),
                "place", said.place(),
                "with", said.with().token(),
                "remedy", said.remedy(),
                "owner", said.owner().orElseGet(() -> Words.of("handover.owner.OPERATOR")),
                "due", Formats.date(said.dueOn()),
                "stands", Words.of(piece.stands() ? "handover.recordSnagStands" : "handover.recordSnagClosed"));
    }

    private static List<Map<String, Object>> instructions(HandoverRecord record) {
        return record.instructions().stream()
                .map(Piece::said)
                .map(said -> Map.<String, Object>of(
                        "on", Formats.date(said.on()),
                        "by", said.by(),
                        "drivers", tokens(said.drivers()),
                        "workshop", tokens(said.workshop()),
                        "topics", String.join(", ", said.topics())))
                .toList();
    }

    private static String tokens(List<Outsider> people) {
        return people.stream().map(Outsider::token).collect(Collectors.joining(", "));
    }
}
