package wainbook.book.photograph;

import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import wainbook.ledger.evidence.EvidenceFile;

/**
 * A photograph of a vehicle's record.
 *
 * @param entry the number of the entry that points to it
 * @param at when the works heard of it; the camera's own time is not asked
 * @param shows in words
 * @param counts whether the entry was not voided since
 * @param carried whether the set has room for it
 */
public record Photograph(long entry, Instant at, String shows, boolean counts, EvidenceFile file, boolean carried) {

    private static final Map<String, String> ENDINGS =
            Map.of("image/jpeg", "jpg", "image/png", "png", "image/webp", "webp");

    /** Its place in a set: by entry, so that a folder lists it in the order of the record, and by fingerprint. */
    public String name() {
        return String.format(
                Locale.ROOT,
                "photographs/%05d-%s.%s",
                entry,
                file.sha256().substring(0, 8),
                ENDINGS.get(file.mediaType()));
    }
}
