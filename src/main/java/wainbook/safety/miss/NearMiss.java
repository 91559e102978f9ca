package wainbook.safety.miss;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.safety.Nameless;
import wainbook.safety.SafetySaying.NearMissClosed;
import wainbook.safety.SafetySaying.NearMissLookedAt;
import wainbook.safety.SafetySaying.NearMissReported;

/**
 * A near miss as its entries leave it.
 *
 * @param told words that were added, oldest first
 * @param looked the newest word on who sees to it and by when
 */
public record NearMiss(Entry reported, List<Entry> told, Optional<Entry> looked, Optional<Entry> closed) {

    /** How far it is. */
    public enum State {
        NEW,
        LOOKED_AT,
        CLOSED
    }

    public NearMiss {
        told = List.copyOf(told);
    }

    static NearMiss of(Entry reported) {
        return new NearMiss(reported, List.of(), Optional.empty(), Optional.empty());
    }

    public NearMissReported said() {
        return (NearMissReported) reported.saying();
    }

    public int number() {
        return said().nearMiss();
    }

    public State state() {
        return closed.isPresent() ? State.CLOSED : looked.isPresent() ? State.LOOKED_AT : State.NEW;
    }

    public boolean open() {
        return closed.isEmpty();
    }

    public boolean nameless() {
        return reported.moment().who().equals(Nameless.SPEAKER);
    }

    public Optional<String> owner() {
        return looked.map(entry -> ((NearMissLookedAt) entry.saying()).owner());
    }

    public Optional<LocalDate> dueOn() {
        return looked.map(entry -> ((NearMissLookedAt) entry.saying()).dueOn());
    }

    public Optional<String> changed() {
        return closed.map(entry -> ((NearMissClosed) entry.saying()).changed());
    }

    NearMiss toldBy(Entry entry) {
        var more = new ArrayList<>(told);
        more.add(entry);
        return new NearMiss(reported, more, looked, closed);
    }

    NearMiss lookedAtBy(Entry entry) {
        return new NearMiss(reported, told, Optional.of(entry), closed);
    }

    /** What was said first on closing stands. */
    NearMiss closedBy(Entry entry) {
        return new NearMiss(reported, told, looked, closed.or(() -> Optional.of(entry)));
    }
}
