package wainbook.handover.record.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Set;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.page.Filled;

/** Keeps a photograph that came with a form, even where the form comes back, so that nobody chooses it twice. */
@ApplicationScoped
class Picture {

    private static final Set<String> TYPES = Set.of("image/jpeg", "image/png", "image/webp");

    private final EvidenceFiles files;

    Picture(EvidenceFiles files) {
        this.files = files;
    }

    /** Its fingerprint stands in the field with the same name and {@code Kept}. */
    Filled kept(Filled filled, String field, FileUpload file) {
        if (file == null || file.size() == 0) {
            return filled;
        }
        if (!TYPES.contains(file.contentType())) {
            return filled.wrong(field, "waste.pictureType");
        }
        try {
            byte[] content = Files.readAllBytes(file.uploadedFile());
            return filled.with(
                    field + "Kept", files.keep(content, file.contentType()).sha256());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
