package wainbook.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * Checks one stream after another against the format's page: every stored byte is hashed, every column compared with what
 * the text says. Knows bytes and nothing of rooms, so that it says the same of any copy.
 */
final class Verification {

    /** A stored entry, column by column. */
    record Stored(UUID id, UUID stream, long number, String kind, String said, String hash) {}

    /** The stored end of a stream. */
    record End(UUID id, String subject, long lastNumber, String lastHash, Instant lastAt) {}

    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Set<EvidenceFile>> pointedTo = new HashMap<>();
    private final Set<UUID> ids = new HashSet<>();
    private long entries;
    private long files;

    /** Takes a whole stream: its end, and its entries by number. */
    void stream(End end, List<Stored> stored) {
        String previous = Said.NOTHING;
        long number = 0;
        Instant at = Instant.MIN;
        for (Stored row : stored) {
            number++;
            entries++;
            String where = end.subject() + " entry " + number;
            if (!ids.add(row.id())) {
                find(where, "its id stands twice");
            }
            if (!Said.hash(row.said()).equals(row.hash())) {
                find(where, "the text does not have the stored hash");
            }
            try {
                Said said = Said.parse(row.said());
                columns(where, row, said);
                if (said.number() != number) {
                    find(where, "says it is number " + said.number());
                }
                if (!said.previous().equals(previous)) {
                    find(where, "does not follow the entry before it");
                }
                if (!said.subject().equals(end.subject())) {
                    find(where, "is about " + said.subject());
                }
                if (said.at().isBefore(at)) {
                    find(where, "is earlier than the entry before it");
                }
                at = said.at();
                Evidence.in(said.body())
                        .forEach(file -> pointedTo
                                .computeIfAbsent(file.sha256(), none -> new HashSet<>())
                                .add(file));
            } catch (IllegalArgumentException unreadable) {
                find(where, "cannot be read: " + unreadable.getMessage());
            }
            previous = row.hash();
        }
        end(end, number, previous, at);
    }

    /**
     * Takes a stored file; call after all streams. A file that no entry points to is no part of the record: it was sent
     * with an act that was refused.
     */
    void file(String sha256, String mediaType, long sizeBytes, byte[] content) {
        files++;
        String where = "file " + sha256;
        if (!Said.sha256(content).equals(sha256)) {
            find(where, "its bytes do not have this fingerprint");
        }
        if (sizeBytes != content.length) {
            find(where, "its size is not that of its bytes");
        }
        Set<EvidenceFile> said = pointedTo.remove(sha256);
        if (said != null && said.stream().anyMatch(file -> !file.mediaType().equals(mediaType))) {
            find(where, "its type is not what the entry says");
        }
        if (said != null && said.stream().anyMatch(file -> file.sizeBytes() != sizeBytes)) {
            find(where, "its size is not what the entry says");
        }
    }

    VerificationReport report(long streams) {
        pointedTo.keySet().stream().sorted().forEach(sha256 -> find("file " + sha256, "is missing"));
        return new VerificationReport(streams, entries, files, findings);
    }

    void find(String where, String what) {
        findings.add(new Finding(where, what));
    }

    private void columns(String where, Stored row, Said said) {
        if (!said.id().equals(row.id())) {
            find(where, "column id is not what the text says");
        }
        if (!said.stream().equals(row.stream())) {
            find(where, "column stream is not what the text says");
        }
        if (said.number() != row.number()) {
            find(where, "column number is not what the text says");
        }
        if (!said.kind().equals(row.kind())) {
            find(where, "column kind is not what the text says");
        }
    }

    private void end(End end, long number, String hash, Instant at) {
        if (end.lastNumber() != number) {
            find(end.subject(), "ends at number " + end.lastNumber() + " but " + number + " entries are stored");
        }
        if (!end.lastHash().equals(hash)) {
            find(end.subject(), "the last hash of the stream is not that of its last entry");
        }
        if (number == 0) {
            find(end.subject(), "has no entries");
        } else if (!end.lastAt().equals(at)) {
            find(end.subject(), "the last time of the stream is not that of its last entry");
        }
        try {
            Subject subject = Subject.parse(end.subject());
            if (!subject.toString().equals(end.subject()) || !subject.stream().equals(end.id())) {
                find(end.subject(), "the id of the stream does not follow from its subject");
            }
        } catch (IllegalArgumentException unreadable) {
            find(end.subject(), "the subject of the stream cannot be read: " + unreadable.getMessage());
        }
    }
}
