package wainbook.matter.nonconformity;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NoConcession;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.page.Option;
import wainbook.page.Words;

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

    /** What can be chosen for it: a concession only where the limit is the works' to give away. */
    public List<Option> dispositions() {
        return Arrays.stream(Disposition.values())
                .filter(one -> one != Disposition.CONCESSION || mayBeConceded())
                .map(one -> new Option(one.name(), Words.of("matter.disposition." + one.name())))
                .toList();
    }

    private boolean mayBeConceded() {
        return opened.noConcession().isEmpty() && opened.item().isPresent();
    }

    /** Why no concession is offered for it. */
    public Optional<String> beyondConcession() {
        return opened.noConcession().map(Nonconformity::word);
    }

    static String word(NoConcession bar) {
        return Words.of("matter.noConcessionFor." + bar.name());
    }

    public String title() {
        return Words.of("matter.nonconformityNumber", number());
    }

    public String causeInWords() {
        return Words.of("matter.cause." + opened.cause().name());
    }

    /** Whether the item stands as it is, by concession. */
    public boolean conceded() {
        return disposed.filter(said -> said.disposition() == Disposition.CONCESSION)
                .isPresent();
    }
}
