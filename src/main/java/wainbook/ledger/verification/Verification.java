package wainbook.ledger.verification;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import wainbook.ledger.Subject;
import wainbook.ledger.bytes.Said;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.verification.Finding.What;

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
                find(where, What.ID_TWICE);
            }
            if (!Said.hash(row.said()).equals(row.hash())) {
                find(where, What.TEXT_WITHOUT_ITS_HASH);
            }
            try {
                Said said = Said.parse(row.said());
                columns(where, row, said);
                if (said.number() != number) {
                    find(where, What.OTHER_NUMBER, said.number());
                }
                if (!said.previous().equals(previous)) {
                    find(where, What.DOES_NOT_FOLLOW);
                }
                if (!said.subject().equals(end.subject())) {
                    find(where, What.OTHER_SUBJECT, said.subject());
                }
                if (said.at().isBefore(at)) {
                    find(where, What.EARLIER_THAN_BEFORE);
                }
                at = said.at();
                Evidence.in(said.body())
                        .forEach(file -> pointedTo
                                .computeIfAbsent(file.sha256(), none -> new HashSet<>())
                                .add(file));
            } catch (IllegalArgumentException unreadable) {
                find(where, What.UNREADABLE, unreadable.getMessage());
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
            find(where, What.FILE_FINGERPRINT);
        }
        if (sizeBytes != content.length) {
            find(where, What.FILE_SIZE);
        }
        Set<EvidenceFile> said = pointedTo.remove(sha256);
        if (said != null && said.stream().anyMatch(file -> !file.mediaType().equals(mediaType))) {
            find(where, What.FILE_TYPE_SAID);
        }
        if (said != null && said.stream().anyMatch(file -> file.sizeBytes() != sizeBytes)) {
            find(where, What.FILE_SIZE_SAID);
        }
    }

    VerificationReport report(long streams) {
        pointedTo.keySet().stream().sorted().forEach(sha256 -> find("file " + sha256, What.FILE_MISSING));
        return new VerificationReport(streams, entries, files, findings);
    }

    void find(String where, What what, Object... arguments) {
        findings.add(Finding.of(where, what, arguments));
    }

    private void columns(String where, Stored row, Said said) {
        if (!said.id().equals(row.id())) {
            find(where, What.COLUMN_ID);
        }
        if (!said.stream().equals(row.stream())) {
            find(where, What.COLUMN_STREAM);
        }
        if (said.number() != row.number()) {
            find(where, What.COLUMN_NUMBER);
        }
        if (!said.kind().equals(row.kind())) {
            find(where, What.COLUMN_KIND);
        }
    }

    private void end(End end, long number, String hash, Instant at) {
        if (end.lastNumber() != number) {
            find(end.subject(), What.END_NUMBER, end.lastNumber(), number);
        }
        if (!end.lastHash().equals(hash)) {
            find(end.subject(), What.END_HASH);
        }
        if (number == 0) {
            find(end.subject(), What.NO_ENTRIES);
        } else if (!end.lastAt().equals(at)) {
            find(end.subject(), What.END_TIME);
        }
        try {
            Subject subject = Subject.parse(end.subject());
            if (!subject.toString().equals(end.subject()) || !subject.stream().equals(end.id())) {
                find(end.subject(), What.STREAM_ID);
            }
        } catch (IllegalArgumentException unreadable) {
            find(end.subject(), What.SUBJECT_UNREADABLE, unreadable.getMessage());
        }
    }
}
