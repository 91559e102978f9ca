package wainbook.matter;

import java.time.Instant;
import java.util.Optional;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NonconformityOpened;

/**
 * A nonconformity as it stands.
 *
 * @param openedAt the number of the entry that opened it
 * @param disposedAt the number of the entry that decided it
 */
public record Nonconformity(
        NonconformityOpened opened,
        String openedBy,
        Instant since,
        long openedAt,
        Optional<Disposed> disposed,
        Optional<String> disposedBy,
        long disposedAt) {

    public int number() {
        return opened.nonconformity();
    }

    public boolean awaitsDisposition() {
        return disposed.isEmpty();
    }

    /** Whether the item stands as it is, by concession. */
    public boolean conceded() {
        return disposed.filter(said -> said.disposition() == Disposition.CONCESSION)
                .isPresent();
    }
}
