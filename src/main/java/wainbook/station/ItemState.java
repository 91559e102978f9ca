package wainbook.station;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.station.StationSaying.TakenFromPaper;

/**
 * How one check item of a vehicle stands.
 *
 * @param entries everything on record about it, oldest first
 * @param failures failed results since it was last opened anew; those before count for first-pass yield only
 * @param passing the entry it stands by
 * @param takenBy who has it in hand, and until when the name stands
 * @param missingFacts what must be known to say whether it applies
 */
public record ItemState(
        SheetLine line,
        Status status,
        List<Entry> entries,
        int failures,
        Optional<Entry> passing,
        Optional<Taken> takenBy,
        List<String> missingFacts) {

    /** Somebody's name on an item. */
    public record Taken(String who, Instant since) {

        /** After this time the name no longer keeps others from it. */
        public Instant until() {
            return since.plus(ItemFold.NAME_STANDS);
        }

        public boolean stands(Instant at) {
            return until().isAfter(at);
        }
    }

    /** Where an item is. */
    public enum Status {
        NOT_APPLICABLE,
        FACTS_MISSING,
        OPEN,
        WAITING,
        FAILED,
        NONCONFORMING,
        STALE,
        PASSED,
        CONCEDED,
        CARRIED_OVER,
        RE_SEQUENCED,
        HANDED_ON;

        /** Whether a gate may open over it. */
        public boolean settled() {
            return switch (this) {
                case NOT_APPLICABLE, PASSED, CONCEDED, CARRIED_OVER, RE_SEQUENCED, HANDED_ON -> true;
                case FACTS_MISSING, OPEN, WAITING, FAILED, NONCONFORMING, STALE -> false;
            };
        }
    }

    public ItemState {
        entries = List.copyOf(entries);
        missingFacts = List.copyOf(missingFacts);
    }

    public CheckItem item() {
        return line.item();
    }

    ItemState asking(Ask other) {
        var asked = new SheetLine(line.sheet(), line.revision(), item().asking(other));
        return new ItemState(asked, status, entries, failures, passing, takenBy, missingFacts);
    }

    public String key() {
        return item().key();
    }

    /** What an entry was taken from, if it was written on paper first. */
    public Optional<TakenFromPaper> paper(Entry entry) {
        return PaperMark.on(entries, entry);
    }

    public int triesLeft() {
        return Math.max(0, item().tries() - failures);
    }
}
