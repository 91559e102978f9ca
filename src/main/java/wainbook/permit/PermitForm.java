package wainbook.permit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.permit.PermitSaying.Ticked;

/**
 * A permit form as it was filled in by hand.
 *
 * @param circumstances what else was said of the work
 * @param receivedAt absent where nobody signed for it
 */
public record PermitForm(
        Work sort,
        String work,
        List<Trait> circumstances,
        List<Ticked> precautions,
        String issuer,
        Instant issuedAt,
        String receiver,
        Optional<Instant> receivedAt,
        Instant validUntil,
        Optional<Instant> handedBackAt,
        Optional<Instant> closedAt) {

    public PermitForm {
        circumstances = List.copyOf(circumstances);
        precautions = List.copyOf(precautions);
    }

    public boolean open() {
        return closedAt.isEmpty();
    }

    public Set<Trait> traits() {
        return sort.with(circumstances);
    }

    /** Every time that stands on it but its end, which may lie ahead. */
    public List<Instant> times() {
        return Stream.of(Optional.of(issuedAt), receivedAt, handedBackAt, closedAt)
                .flatMap(Optional::stream)
                .toList();
    }
}
