package wainbook.permit;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.permit.PermitSaying.PermitIssued;

/** One permit as its entries, and the moves of its vehicle, leave it. */
public record Permit(
        Entry issued,
        Optional<Entry> received,
        Optional<Entry> stopped,
        Optional<Entry> handedBack,
        Optional<Entry> moved,
        Optional<Entry> closed) {

    /** How long is looked out for fire after hot work. Works rule; common practice, no source. */
    public static final Duration FIRE_WATCH = Duration.ofMinutes(60);

    static Permit of(Entry issued) {
        return new Permit(
                issued, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public PermitIssued said() {
        return (PermitIssued) issued.saying();
    }

    public int number() {
        return said().permit();
    }

    public Subject subject() {
        return issued.subject();
    }

    public String issuer() {
        return issued.moment().who();
    }

    public Set<Trait> traits() {
        return said().sort().with(said().circumstances());
    }

    public State state(Instant now) {
        if (closed.isPresent()) {
            return State.CLOSED;
        } else if (moved.isPresent()) {
            return State.ENDED_BY_MOVE;
        } else if (handedBack.isPresent()) {
            return State.HANDED_BACK;
        } else if (stopped.isPresent()) {
            return State.STOPPED;
        } else if (!now.isBefore(said().validUntil())) {
            return State.RUN_OUT;
        }
        return received.isPresent() ? State.IN_FORCE : State.WAITS_FOR_RECEIVER;
    }

    /** Whether somebody still owes it something; a move ends all but the watch for fire. */
    public boolean open() {
        return closed.isEmpty() && (moved.isEmpty() || wantsFireWatch());
    }

    /** Whether there was hot work that may have left something glowing. */
    public boolean wantsFireWatch() {
        return said().sort() == Work.HOT_WORK && received.isPresent();
    }

    /** When work under it was surely over; empty while it may go on. */
    public Optional<Instant> overAt() {
        return Stream.of(handedBack, moved)
                .flatMap(Optional::stream)
                .map(entry -> entry.moment().at())
                .min(Instant::compareTo);
    }

    /** From when on the last look counts. */
    public Optional<Instant> lastLookFrom() {
        return wantsFireWatch() ? overAt().map(over -> over.plus(FIRE_WATCH)) : Optional.empty();
    }

    Permit and(Entry entry) {
        Optional<Entry> next = Optional.of(entry);
        if (entry.saying() instanceof PermitSaying.PermitReceived) {
            return new Permit(issued, received.or(() -> next), stopped, handedBack, moved, closed);
        } else if (entry.saying() instanceof PermitSaying.WorkStopped) {
            return new Permit(issued, received, stopped.or(() -> next), handedBack, moved, closed);
        } else if (entry.saying() instanceof PermitSaying.PermitHandedBack) {
            return new Permit(issued, received, stopped, handedBack.or(() -> next), moved, closed);
        } else if (entry.saying() instanceof PermitSaying.PermitClosed) {
            return new Permit(issued, received, stopped, handedBack, moved, closed.or(() -> next));
        }
        return this;
    }

    Permit movedBy(Entry entry) {
        return closed.isPresent() || handedBack.isPresent() || moved.isPresent()
                ? this
                : new Permit(issued, received, stopped, handedBack, Optional.of(entry), closed);
    }
}
