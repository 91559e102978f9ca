package wainbook.process.draft;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying;
import wainbook.process.ProcessSaying.DraftDropped;
import wainbook.process.ProcessSaying.DraftKept;
import wainbook.process.ProcessSaying.DraftProposed;
import wainbook.works.signin.Passwords;

/**
 * Keeps, proposes, releases and drops drafts. What was seen is the number of the draft's last entry and not of its stream's,
 * since many papers share the stream of the works.
 */
@ApplicationScoped
public class Drafting {

    /** What is asked: the whole draft as it shall stand. */
    public record ToKeep(UUID id, Drafted draft, int base, long lookedAt) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(draft.about().subject());
        }

        @Override
        public Class<? extends Saying> says() {
            return DraftKept.class;
        }
    }

    /** What is asked of a draft that its author holds for finished. */
    public record ToPropose(UUID id, About about, long lookedAt) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(about.subject());
        }

        @Override
        public Class<? extends Saying> says() {
            return DraftProposed.class;
        }
    }

    /** What is asked by the second person. */
    public record ToRelease(UUID id, About about, long lookedAt, String password) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(about.subject());
        }

        @Override
        public Class<? extends Saying> says() {
            return ProcessSaying.class;
        }
    }

    /** What is asked of a draft that comes to nothing. */
    public record ToDrop(UUID id, About about, long lookedAt) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(about.subject());
        }

        @Override
        public Class<? extends Saying> says() {
            return DraftDropped.class;
        }
    }

    private final Ledger ledger;
    private final DraftLook look;
    private final Passwords passwords;

    Drafting(Ledger ledger, DraftLook look, Passwords passwords) {
        this.ledger = ledger;
        this.look = look;
        this.passwords = passwords;
    }

    public Outcome<Entry> keep(ToKeep asked, Actor actor) {
        return write(
                asked,
                asked.draft().about(),
                actor,
                rules -> rules.againstKeeping(asked.lookedAt(), asked.base()),
                rules -> List.of(new DraftKept(asked.draft(), asked.base())));
    }

    public Outcome<Entry> propose(ToPropose asked, Actor actor) {
        return write(
                asked,
                asked.about(),
                actor,
                rules -> rules.againstProposing(asked.lookedAt()),
                rules -> List.of(new DraftProposed(asked.about())));
    }

    public Outcome<Entry> release(ToRelease asked, Actor actor) {
        Optional<Reason> unsigned = passwords.against(actor.who(), asked.password());
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        return write(
                asked,
                asked.about(),
                actor,
                rules -> rules.againstReleasing(asked.lookedAt()),
                rules -> rules.revisions().draft().orElseThrow().what().sayings(rules.revisions()));
    }

    public Outcome<Entry> drop(ToDrop asked, Actor actor) {
        return write(
                asked,
                asked.about(),
                actor,
                rules -> rules.againstDropping(asked.lookedAt()),
                rules -> List.of(new DraftDropped(asked.about())));
    }

    private Outcome<Entry> write(
            Asked asked,
            About about,
            Actor actor,
            Function<DraftRules, List<Reason>> against,
            Function<DraftRules, List<? extends Saying>> sayings) {
        return ledger.write(asked, actor, reading -> {
            DraftRules rules = look.rules(reading.of(about.subject()), about, reading.moment());
            List<Reason> reasons = against.apply(rules);
            return reasons.isEmpty() ? said(about.subject(), sayings.apply(rules)) : Decision.refuse(reasons);
        });
    }

    private static Decision said(Subject subject, List<? extends Saying> sayings) {
        Decision decision = Decision.say(subject, sayings.get(0));
        for (Saying further : sayings.subList(1, sayings.size())) {
            decision = decision.andSay(subject, further);
        }
        return decision;
    }
}
