package wainbook.book.chapter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import wainbook.ledger.stream.StoredStream;
import wainbook.page.Words;
import wainbook.print.Attachment;
import wainbook.print.Attachment.Relationship;

/** What a book carries inside: the record as it is stored, the page that explains its bytes, and the list of both. */
public final class Attachments {

    static final String LEDGER = "ledger.ndjson";
    static final String FORMAT = "ledger-format.md";
    public static final String MANIFEST = "manifest.json";

    private Attachments() {}

    static List<Attachment> of(Material material) {
        Attachment ledger = new Attachment(
                LEDGER, "application/x-ndjson", Words.of("printed.fileLedger"), Relationship.Source, ledger(material));
        Attachment format = new Attachment(
                FORMAT, "text/markdown", Words.of("printed.fileFormat"), Relationship.Supplement, format());
        byte[] manifest = Manifest.of(material, List.of(ledger, format)).bytes();
        return List.of(
                ledger,
                format,
                new Attachment(
                        MANIFEST, "application/json", Words.of("printed.fileManifest"), Relationship.Data, manifest));
    }

    /** The hashed texts, byte for byte, one a line. */
    private static byte[] ledger(Material material) {
        StoredStream stored = material.stored();
        return (String.join("\n", stored.lines()) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] format() {
        try (InputStream page = Attachments.class.getResourceAsStream("/formats/ledger.md")) {
            return page.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
