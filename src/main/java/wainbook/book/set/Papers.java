package wainbook.book.set;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.book.chapter.Material;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.Standing;
import wainbook.handover.document.Document;
import wainbook.handover.issue.Issues;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/**
 * A document that goes with a vehicle, with its file: in hand by a rule, or issued by the works.
 *
 * @param code of its rule, or of the works' document
 * @param title what it is
 * @param reference the number it goes by
 * @param name of the file within the set
 */
@SuppressWarnings("ArrayRecordComponent") // Nobody compares them.
record Papers(String code, String title, String reference, EvidenceFile file, String name, byte[] bytes) {

    private static final Map<String, String> ENDINGS = Map.of(
            "application/pdf", "pdf",
            "image/jpeg", "jpg",
            "image/png", "png",
            "image/webp", "webp",
            "text/plain", "txt",
            "text/csv", "csv");

    /** All of a vehicle in the order of the rules, then what the works issued besides. The same file is there once. */
    static List<Papers> of(Material material, EvidenceFiles files) {
        Map<String, Papers> byFile = new LinkedHashMap<>();
        Stream.concat(inHand(material, files), issued(material, files))
                .forEach(paper -> byFile.putIfAbsent(paper.file().sha256(), paper));
        return List.copyOf(byFile.values());
    }

    private static Stream<Papers> inHand(Material material, EvidenceFiles files) {
        return material.vehicle().documents().stream()
                .flatMap(set -> set.documents().stream())
                .filter(document -> document.standing() == Standing.IN_HAND)
                .flatMap(document -> document.noted().map(Document.Noted::said).stream())
                .flatMap(said -> said.file().stream()
                        .flatMap(file -> one(said.requirement(), said.document(), said.reference(), file, files)));
    }

    /** Of each document the last issue. */
    private static Stream<Papers> issued(Material material, EvidenceFiles files) {
        Map<String, Issued> last = new LinkedHashMap<>();
        material.history()
                .saying(Issued.class)
                .map(entry -> (Issued) entry.saying())
                .forEach(said -> last.put(said.document(), said));
        return last.values().stream()
                .flatMap(said -> one(
                        said.document(),
                        said.title(),
                        Issues.number(material.order().number(), said.document(), said.number()),
                        said.file(),
                        files));
    }

    private static Stream<Papers> one(
            String code, String title, String reference, EvidenceFile file, EvidenceFiles files) {
        return files.bytes(file.sha256()).stream()
                .map(bytes -> new Papers(code, title, reference, file, name(code, file), bytes));
    }

    private static String name(String code, EvidenceFile file) {
        return "documents/" + code.replaceAll("[^A-Za-z0-9._-]", "-") + "-"
                + file.sha256().substring(0, 8) + "." + ENDINGS.getOrDefault(file.mediaType(), "bin");
    }

    boolean pdf() {
        return file.mediaType().equals("application/pdf");
    }
}
