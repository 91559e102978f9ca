package wainbook.line.milestone.webhook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.line.milestone.Milestone;

/** One milestone to be told to one address. Not made from the ledger again: whether it was told is known here alone. */
@Entity
@Table(name = "milestone_delivery")
public class Delivery extends PanacheEntityBase {

    /** How it stands. */
    public enum State {
        WAITING,
        DELIVERED,
        GIVEN_UP
    }

    /** What failed at the last try. */
    public enum Fault {
        NO_SECRET,
        BAD_ADDRESS,
        NAME_UNKNOWN,
        LEADS_INSIDE,
        NO_CONNECTION,
        TOO_SLOW,
        REDIRECTED,
        ANSWERED,
        NOT_KNOWN,
        ENDED
    }

    /** The entry and the address. */
    @Id
    public String id;

    public int webhook;
    public String workOrder;

    @Enumerated(EnumType.STRING)
    public Milestone milestone;

    public UUID entry;
    public long entryNumber;
    public Instant reachedAt;

    @Enumerated(EnumType.STRING)
    public State state;

    public int tries;
    public Instant nextAt;
    public Instant lastAt;

    @Enumerated(EnumType.STRING)
    public Fault fault;

    /** HTTP status of the last answer; null where there was none. */
    public Integer answered;

    static String id(UUID entry, int webhook) {
        return entry + "/" + webhook;
    }

    /** @param off addresses that are switched off: what waits for them waits on, and keeps nothing else waiting */
    static List<Delivery> due(Instant now, List<Integer> off, int most) {
        String order = " order by nextAt, reachedAt, id";
        String when = "state = ?1 and nextAt <= ?2";
        return (off.isEmpty()
                        ? Delivery.<Delivery>find(when + order, State.WAITING, now)
                        : Delivery.<Delivery>find(when + " and webhook not in ?3" + order, State.WAITING, now, off))
                .page(0, most)
                .list();
    }

    public static List<Delivery> latest(int most) {
        return Delivery.<Delivery>find("order by reachedAt desc, id")
                .page(0, most)
                .list();
    }

    public static long waiting() {
        return count("state", State.WAITING);
    }

    public static long givenUp() {
        return count("state", State.GIVEN_UP);
    }

    /** Takes what came of a try. */
    void note(Outgone outgone, Instant now) {
        tries++;
        lastAt = now;
        answered = outgone.status().orElse(null);
        fault = outgone.fault().orElse(null);
        if (outgone.fault().isEmpty()) {
            state = State.DELIVERED;
            return;
        }
        Optional<Duration> pause = fault == Fault.ENDED ? Optional.empty() : Pauses.after(tries);
        state = pause.isPresent() ? State.WAITING : State.GIVEN_UP;
        pause.ifPresent(wait -> nextAt = now.plus(wait));
    }

    /** Somebody has it tried again: at once, and with all pauses before it anew. */
    void again(Instant now) {
        state = State.WAITING;
        tries = 0;
        nextAt = now;
    }

    /** What came of one try; without a fault it was taken. */
    record Outgone(Optional<Integer> status, Optional<Fault> fault) {
        static Outgone failed(Fault fault) {
            return new Outgone(Optional.empty(), Optional.of(fault));
        }

        /** Any 2xx takes it. */
        static Outgone answered(int status) {
            Optional<Fault> fault = status >= 200 && status < 300
                    ? Optional.empty()
                    : Optional.of(status >= 300 && status < 400 ? Fault.REDIRECTED : Fault.ANSWERED);
            return new Outgone(Optional.of(status), fault);
        }
    }
}
