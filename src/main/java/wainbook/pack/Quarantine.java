package wainbook.pack;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.pack.PackSaying.Judged;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.PackSaying.Watched;
import wainbook.pack.watch.Temperatures;
import wainbook.pack.watch.WatchTimes;

/** A pack set aside as damaged, with how it was watched and what was found. */
public record Quarantine(Entry begun, List<Entry> watched, Optional<Entry> judgedBy) {

    public Quarantine {
        watched = List.copyOf(watched);
    }

    public Quarantined said() {
        return (Quarantined) begun.saying();
    }

    public Optional<Judged> judged() {
        return judgedBy.map(entry -> (Judged) entry.saying());
    }

    /** Whether nobody has judged it yet. */
    public boolean open() {
        return judgedBy.isEmpty();
    }

    /** Whether the pack may not be used: not judged, or found defective. */
    public boolean stands() {
        return !is(Judgement.SOUND);
    }

    public boolean holdsLot() {
        return open() || is(Judgement.DEFECTIVE_LOT);
    }

    public boolean is(Judgement judgement) {
        return judged().filter(said -> said.judgement() == judgement).isPresent();
    }

    public List<Temperatures> readings() {
        return watched.stream()
                .map(entry -> {
                    var said = (Watched) entry.saying();
                    return new Temperatures(entry.moment().at(), said.packC(), said.ambientC());
                })
                .toList();
    }

    /** The last reading with an alarm. */
    public Optional<Entry> alarm() {
        return watched.stream()
                .filter(entry -> !((Watched) entry.saying()).alarms().isEmpty())
                .reduce((one, next) -> next);
    }

    /** Of the watch that runs; an alarm began it anew. */
    public WatchTimes times() {
        Instant from = alarm().orElse(begun).moment().at();
        return new WatchTimes(
                from,
                watched.stream()
                        .map(entry -> entry.moment().at())
                        .filter(at -> !at.isBefore(from))
                        .toList());
    }

    Quarantine watchedBy(Entry entry) {
        var more = new ArrayList<>(watched);
        more.add(entry);
        return new Quarantine(begun, more, judgedBy);
    }

    Quarantine judgedBy(Entry entry) {
        return new Quarantine(begun, watched, Optional.of(entry));
    }
}
