package wainbook.matter.nonconformity;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;

/** Decides what is done about a nonconformity. */
@ApplicationScoped
public class Disposal {

    /** What is asked; {@code seen} is the number of the stream when the decider looked. */
    public record Dispose(
            UUID id, String order, int nonconformity, Disposition disposition, String because, Optional<Long> seen)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Disposed.class;
        }
    }

    private final Ledger ledger;

    Disposal(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> decide(Dispose asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            List<Reason> against =
                    against(asked, reading.of(order), reading.moment().who());
            return against.isEmpty()
                    ? Decision.say(order, new Disposed(asked.nonconformity(), asked.disposition(), asked.because()))
                    : Decision.refuse(against);
        });
    }

    public static List<Reason> against(Dispose asked, History history, String who) {
        Optional<Nonconformity> known = Nonconformities.of(history).number(asked.nonconformity());
        if (known.isEmpty()) {
            return List.of(Reason.of("matter.notFound", Reason.WORKS_RULE, asked.nonconformity(), asked.order()));
        }
        var against = new ArrayList<Reason>();
        Nonconformity open = known.get();
        if (!open.awaitsDisposition()) {
            against.add(Reason.of("matter.decidedAlready", Reason.WORKS_RULE, open.number()));
        }
        if (open.openedBy().equals(who)) {
            against.add(Reason.of("matter.ownReport", "ISO 9001:2015 8.7 (clause from memory)", open.number()));
        }
        if (asked.because().isBlank()) {
            against.add(Reason.of("matter.reasonMissing", Reason.WORKS_RULE));
        }
        if (asked.disposition() == Disposition.CONCESSION) {
            open.opened()
                    .noConcession()
                    .ifPresent(bar -> against.add(Reason.of(
                            "matter.noConcession", Reason.WORKS_RULE, open.number(), Nonconformity.word(bar))));
            if (open.opened().item().isEmpty()) {
                against.add(Reason.of("matter.nothingToConcede", Reason.WORKS_RULE, open.number()));
            }
        }
        return against;
    }
}
