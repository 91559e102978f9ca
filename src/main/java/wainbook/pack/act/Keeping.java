package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.pack.KeptParts;
import wainbook.pack.PackSaying;
import wainbook.pack.PackSaying.PartKept;
import wainbook.pack.PackSaying.PartLetGo;

/** Says which parts are packs of this works, so that nothing is fitted as one of them that was not received here. */
@ApplicationScoped
public class Keeping {

    /** The part's code as check sheets have it, and whether it is kept from now on. */
    public record ToKeep(UUID id, String part, boolean kept) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return PackSaying.class;
        }
    }

    private final Ledger ledger;

    Keeping(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> keep(ToKeep asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (!asked.part().matches("[\\p{Alnum}][\\p{Alnum}._-]{0,79}")) {
                against.add(Reason.of("pack.partFault", Reason.WORKS_RULE).liftedAt("#part"));
            } else if (KeptParts.of(reading.of(Subject.works())).has(asked.part()) == asked.kept()) {
                against.add(
                        Reason.of(asked.kept() ? "pack.keptAlready" : "pack.notKept", Reason.WORKS_RULE, asked.part())
                                .liftedAt("#part"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(), asked.kept() ? new PartKept(asked.part()) : new PartLetGo(asked.part()))
                    : Decision.refuse(against);
        });
    }
}
