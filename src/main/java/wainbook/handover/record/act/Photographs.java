package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/** Photographs that were handed in before. */
@ApplicationScoped
class Photographs {

    private final EvidenceFiles files;

    Photographs(EvidenceFiles files) {
        this.files = files;
    }

    /** Empty where no picture of a camera was handed in under this fingerprint. */
    Optional<EvidenceFile> of(String sha256) {
        return Optional.of(sha256)
                .filter(text -> text.matches("[0-9a-f]{64}"))
                .flatMap(files::file)
                .filter(file -> file.mediaType().matches("image/(jpeg|png|webp)"));
    }

    EvidenceFile keep(byte[] content, String mediaType) {
        return files.keep(content, mediaType);
    }
}
