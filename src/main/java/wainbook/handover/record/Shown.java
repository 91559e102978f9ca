package wainbook.handover.record;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.WorkOrder;

/**
 * What a receiver is shown before they sign, as lines without names of people. Its words stand here and in no bundle: a later
 * release must find the same bytes for the same record, or every receipt would cease to count.
 */
public record Shown(Map<Part, List<String>> lines) {

    /** Its parts, in the order in which they are shown. */
    public enum Part {
        VEHICLE,
        STATE,
        THINGS,
        PICTURES,
        SNAGS,
        INSTRUCTION,
        WARRANTY,
        DOCUMENTS
    }

    public static Shown of(WorkOrder order, HandoverRecord record, Optional<DocumentSet> documents) {
        Map<Part, List<String>> lines = new EnumMap<>(Part.class);
        lines.put(Part.VEHICLE, vehicle(order));
        lines.put(
                Part.STATE,
                record.state().map(Piece::said).stream()
                        .map(said -> "odometer " + said.odometerKm() + " km; charge " + said.chargePercent() + " %; at "
                                + said.bay())
                        .toList());
        lines.put(
                Part.THINGS,
                record.things().map(Piece::said).stream()
                        .flatMap(said -> said.things().isEmpty()
                                ? Stream.of("nothing")
                                : said.things().stream().map(thing -> thing.count() + " × " + thing.thing()))
                        .toList());
        lines.put(
                Part.PICTURES,
                record.pictures().stream()
                        .map(Piece::said)
                        .map(said -> "photograph " + said.picture() + ": " + said.place() + "; " + said.remark() + "; "
                                + said.photograph().sha256())
                        .toList());
        lines.put(
                Part.SNAGS,
                record.openSnags().stream().map(Piece::said).map(Shown::snag).toList());
        lines.put(Part.INSTRUCTION, instruction(record));
        lines.put(
                Part.WARRANTY,
                record.warranty().map(Piece::said).stream()
                        .map(said -> "from " + said.from() + " at " + said.odometerKm() + " km: " + said.covers())
                        .toList());
        lines.put(
                Part.DOCUMENTS,
                documents.stream()
                        .flatMap(set -> set.standing(Standing.IN_HAND).stream())
                        .map(Shown::document)
                        .toList());
        return new Shown(lines);
    }

    private static List<String> vehicle(WorkOrder order) {
        return Stream.concat(
                        Stream.of(
                                "order " + order.number(),
                                "operator " + order.ordered().operator()),
                        order.donor().stream().flatMap(Shown::donor))
                .toList();
    }

    private static Stream<String> donor(DonorReceived donor) {
        return Stream.of("identification number " + donor.vin(), "registration " + donor.registration());
    }

    private static String snag(SnagAgreed said) {
        return "snag " + said.snag() + ": " + said.defect() + "; at " + said.place() + "; agreed with "
                + said.with().token() + "; " + said.remedy() + " by "
                + said.owner().orElse("the operator") + " until " + said.dueOn();
    }

    private static List<String> instruction(HandoverRecord record) {
        return Stream.concat(
                        record.instructions().stream().map(Piece::said).map(Shown::instructed),
                        record.omitted().stream()
                                .map(left -> "nobody instructed: " + left.said().reason()))
                .toList();
    }

    private static String instructed(Instructed said) {
        return "instruction " + said.instruction() + " on " + said.on() + " by " + said.by() + "; drivers "
                + tokens(said.drivers()) + "; workshop " + tokens(said.workshop()) + "; on "
                + String.join(", ", said.topics());
    }

    private static String tokens(List<Outsider> people) {
        return people.isEmpty() ? "none" : people.stream().map(Outsider::token).collect(Collectors.joining(", "));
    }

    private static String document(Document document) {
        return document.id() + " " + document.rule().document()
                + document.noted()
                        .map(Document.Noted::said)
                        .map(said -> "; " + said.reference()
                                + said.file().map(file -> "; " + file.sha256()).orElse(""))
                        .orElse("");
    }

    public byte[] bytes() {
        return Arrays.stream(Part.values())
                .map(part -> part + "\n" + String.join("\n", lines.get(part)) + "\n")
                .collect(Collectors.joining("\n"))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Of all of it: 64 hexadecimal digits. */
    public String fingerprint() {
        return EvidenceFile.of(bytes(), "text/plain").sha256();
    }

    public List<RecordSaying.Part> parts() {
        return Arrays.stream(Part.values())
                .map(part -> new RecordSaying.Part(
                        part,
                        EvidenceFile.of(
                                        String.join("\n", lines.get(part)).getBytes(StandardCharsets.UTF_8),
                                        "text/plain")
                                .sha256()))
                .toList();
    }
}
