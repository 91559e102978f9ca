package wainbook.rehearsal.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.evidence.EvidenceFiles;

/** Stands for the photographs and reports of an invented vehicle: one of each sort, kept once. */
public final class Evidence {

    private static final Map<String, String> BY_TYPE = Map.of(
            "image/png", "photograph.png",
            "image/jpeg", "photograph.jpg",
            "application/pdf", "report.pdf");

    private final EvidenceFiles files;

    public Evidence(EvidenceFiles files) {
        this.files = files;
    }

    /** Keeps it and gives its fingerprint. */
    public String of(String mediaType) {
        String name = Optional.ofNullable(BY_TYPE.get(mediaType))
                .orElseThrow(() -> new IllegalArgumentException("nothing stands for " + mediaType));
        try (InputStream bytes = Evidence.class.getResourceAsStream("/rehearsal/" + name)) {
            return files.keep(bytes.readAllBytes(), mediaType).sha256();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
