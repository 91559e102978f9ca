package wainbook.book.chapter;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.book.photograph.Photograph;
import wainbook.handover.document.DocumentSet;
import wainbook.ledger.Subject;
import wainbook.ledger.bytes.CanonicalJson;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.OrderSaying.Returned;
import wainbook.print.Attachment;

/**
 * What belongs together, with the fingerprint of each file.
 *
 * @param at the time of the last entry
 * @param head the hash of the last entry
 * @param carriesOn the record that this one goes on from, where the vehicle came back
 */
public record Manifest(
        String format,
        String subject,
        String entries,
        Instant at,
        String head,
        Optional<Earlier> carriesOn,
        Optional<Rules> rules,
        List<Listed> files) {

    private static final String FORMAT = "wainbook.manifest/2";

    /** The record of the vehicle’s former order, up to its last entry then. */
    public record Earlier(String subject, String entries, String head) {
        static Earlier of(Returned from) {
            return new Earlier(
                    Subject.workOrder(from.earlier()).toString(), String.valueOf(from.carriesOn()), from.head());
        }
    }

    /** The rules that documents were judged by. */
    public record Rules(String set, int revision, String on) {}

    /**
     * A file.
     *
     * @param photograph what it is a picture of; absent for other files
     */
    public record Listed(
            String name, String mediaType, String sizeBytes, String sha256, Optional<Pictured> photograph) {

        public static Listed of(String name, String mediaType, byte[] bytes) {
            return of(name, EvidenceFile.of(bytes, mediaType), Optional.empty());
        }

        public static Listed of(Photograph photograph) {
            return of(photograph.name(), photograph.file(), Optional.of(Pictured.of(photograph)));
        }

        private static Listed of(String name, EvidenceFile file, Optional<Pictured> photograph) {
            return new Listed(name, file.mediaType(), String.valueOf(file.sizeBytes()), file.sha256(), photograph);
        }
    }

    /**
     * What a photograph shows.
     *
     * @param entry the number of the entry that points to it
     * @param at when the works heard of it
     * @param counts whether that entry was not voided since
     */
    public record Pictured(String shows, String entry, Instant at, boolean counts) {
        static Pictured of(Photograph photograph) {
            return new Pictured(
                    photograph.shows(), String.valueOf(photograph.entry()), photograph.at(), photograph.counts());
        }
    }

    public Manifest {
        files = List.copyOf(files);
    }

    static Manifest of(Material material, List<Attachment> files) {
        return listing(
                material,
                files.stream()
                        .map(file -> Listed.of(file.name(), file.mediaType(), file.bytes()))
                        .toList());
    }

    public static Manifest listing(Material material, List<Listed> files) {
        return new Manifest(
                FORMAT,
                material.stored().subject().toString(),
                String.valueOf(material.stored().number()),
                material.at(),
                material.stored().hash(),
                material.order().links().from().map(Earlier::of),
                material.vehicle().documents().map(Manifest::rules),
                files);
    }

    private static Rules rules(DocumentSet set) {
        return new Rules(set.set(), set.revision(), set.handover().toString());
    }

    public byte[] bytes() {
        return (CanonicalJson.tree(this).toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8);
    }
}
