package wainbook.isolation.register;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.ItemRegistered;
import wainbook.isolation.IsolationSaying.ItemRetired;
import wainbook.isolation.fact.Register;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.works.PersonRow;

/** Puts a numbered thing on the register, or retires it. A number is given once and never again. */
@ApplicationScoped
public class Registering {

    /** What is asked; only a lock may have an owner. */
    public record ToRegister(UUID id, String number, Register.Sort sort, Optional<String> owner) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return ItemRegistered.class;
        }
    }

    /** What is asked. */
    public record ToRetire(UUID id, String number, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return ItemRetired.class;
        }
    }

    private final Ledger ledger;
    private final FactsNow factsNow;

    Registering(Ledger ledger, FactsNow factsNow) {
        this.ledger = ledger;
        this.factsNow = factsNow;
    }

    public Outcome<Entry> register(ToRegister asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var said = new ItemRegistered(asked.number(), asked.sort(), asked.owner());
            List<Reason> against = new ArrayList<>(against(said, reading.moment()));
            if (!asked.number().matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
                against.add(Reason.of("isolating.numberForm", Reason.WORKS_RULE, asked.number())
                        .liftedAt("#number"));
            }
            if (asked.owner().isPresent() && asked.sort() != Register.Sort.LOCK) {
                against.add(Reason.of("isolating.ownerOfLockOnly", Reason.WORKS_RULE)
                        .liftedAt("#owner"));
            }
            asked.owner()
                    .filter(owner -> PersonRow.findByIdOptional(owner).isEmpty())
                    .ifPresent(owner -> against.add(Reason.of("isolating.ownerUnknown", Reason.WORKS_RULE, owner)
                            .liftedAt("#owner")));
            return against.isEmpty() ? Decision.say(Subject.works(), said) : Decision.refuse(against);
        });
    }

    public Outcome<Entry> retire(ToRetire asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var said = new ItemRetired(asked.number(), asked.reason());
            List<Reason> against = new ArrayList<>(against(said, reading.moment()));
            if (asked.reason().isBlank()) {
                against.add(
                        Reason.of("isolating.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            return against.isEmpty() ? Decision.say(Subject.works(), said) : Decision.refuse(against);
        });
    }

    /** What stands against it, by the same rules as every step. */
    List<Reason> against(IsolationSaying said, Moment moment) {
        return Isolation.none().reasonsAgainst(said, moment, factsNow.ofTheRegister(moment));
    }
}
