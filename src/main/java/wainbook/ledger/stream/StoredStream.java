package wainbook.ledger.stream;

import java.time.Instant;
import java.util.List;
import wainbook.ledger.Subject;

/**
 * A stream as it is stored, for whoever wants to prove it elsewhere.
 *
 * @param hash the last entry's; kept elsewhere, it proves later that nothing up to here was changed
 * @param lines the hashed texts, byte for byte, oldest first
 */
public record StoredStream(Subject subject, long number, String hash, Instant at, List<String> lines) {
    public StoredStream {
        lines = List.copyOf(lines);
    }
}
