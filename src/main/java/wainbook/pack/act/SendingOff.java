package wainbook.pack.act;

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
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.SentOff;
import wainbook.pack.Serials;
import wainbook.pack.WhereFitted;

/** Records that a pack has left the works by itself. A damaged one is judged before. */
@ApplicationScoped
public class SendingOff {

    /** Where it goes, and under which note. */
    public record ToSend(UUID id, String serial, String to, Optional<String> words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Serials.subject(serial));
        }

        @Override
        public Class<? extends Saying> says() {
            return SentOff.class;
        }
    }

    private final Ledger ledger;
    private final WhereFitted fitted;

    SendingOff(Ledger ledger, WhereFitted fitted) {
        this.ledger = ledger;
        this.fitted = fitted;
    }

    public Outcome<Entry> send(ToSend asked, Actor actor) {
        Subject subject = Serials.subject(asked.serial());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(against(reading.of(subject)));
            TypedRule.name(asked.to(), "to").ifPresent(against::add);
            TypedRule.words(asked.words()).ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(subject, new SentOff(asked.to(), asked.words()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against it; asked before a page is drawn. */
    public List<Reason> against(History history) {
        var against = new ArrayList<Reason>();
        String serial = history.subject().code();
        Optional<Pack> pack = Pack.of(history);
        if (pack.isEmpty() || pack.get().gone()) {
            against.add(Reason.of("pack.notHere", Reason.WORKS_RULE, serial).liftedAt("/packs"));
        }
        if (pack.filter(Pack::quarantined).isPresent()) {
            against.add(Reason.of("pack.judgeFirst", Reason.PRACTICE, serial).liftedAt("/packs/" + serial + "#judge"));
        }
        fitted.order(serial)
                .ifPresent(order -> against.add(Reason.of("pack.stillFitted", Reason.WORKS_RULE, serial, order)
                        .liftedAt("/orders/" + order)));
        return against;
    }
}
