package wainbook.book.set;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.book.chapter.Material;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/**
 * A document in hand with its file.
 *
 * @param name of the file within the set
 */
@SuppressWarnings("ArrayRecordComponent") // Nobody compares them.
record Papers(DocumentNoted said, EvidenceFile file, String name, byte[] bytes) {

    private static final Map<String, String> ENDINGS = Map.of(
            "application/pdf", "pdf",
            "image/jpeg", "jpg",
            "image/png", "png",
            "image/webp", "webp",
            "text/plain", "txt",
            "text/csv", "csv");

    /** All of a vehicle in the order of the rules. */
    static List<Papers> of(Material material, EvidenceFiles files) {
        return material.vehicle().documents().stream()
                .flatMap(set -> set.documents().stream())
                .filter(document -> document.standing() == Standing.IN_HAND)
                .flatMap(document -> document.noted().map(Document.Noted::said).stream())
                .flatMap(said -> one(said, files).stream())
                .toList();
    }

    private static Optional<Papers> one(DocumentNoted said, EvidenceFiles files) {
        return said.file()
                .flatMap(file ->
                        files.bytes(file.sha256()).map(bytes -> new Papers(said, file, name(said, file), bytes)));
    }

    private static String name(DocumentNoted said, EvidenceFile file) {
        return "documents/" + said.requirement().replaceAll("[^A-Za-z0-9._-]", "-") + "-"
                + file.sha256().substring(0, 8) + "." + ENDINGS.getOrDefault(file.mediaType(), "bin");
    }

    boolean pdf() {
        return file.mediaType().equals("application/pdf");
    }
}
