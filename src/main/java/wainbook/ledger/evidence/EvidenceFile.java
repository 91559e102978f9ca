package wainbook.ledger.evidence;

import wainbook.ledger.bytes.Said;

/**
 * What an entry says of a file that belongs to it. The bytes lie beside the ledger under this fingerprint.
 *
 * @param sha256 64 hexadecimal digits; a field of this name in an entry always points to a stored file
 */
public record EvidenceFile(String sha256, String mediaType, long sizeBytes) {

    public EvidenceFile {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a fingerprint is 64 hexadecimal digits, not: " + sha256);
        }
    }

    public static EvidenceFile of(byte[] content, String mediaType) {
        return new EvidenceFile(Said.sha256(content), mediaType, content.length);
    }
}
