package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.RecordSaying.ListWorded;
import wainbook.handover.record.RecordSaying.Wordlist;
import wainbook.handover.record.Wordlists;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/** The works words its lists of what is given and what is instructed. What was recorded before keeps its words. */
@ApplicationScoped
public class Wording {

    public record ToWord(UUID id, Wordlist wordlist, List<String> words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return ListWorded.class;
        }
    }

    private final Ledger ledger;

    Wording(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> word(ToWord asked, Actor actor) {
        boolean sound = !asked.words().isEmpty()
                && asked.words().size() <= Wordlists.MOST
                && asked.words().stream().allMatch(word -> !word.isBlank() && word.length() <= Wordlists.LONGEST);
        return ledger.write(
                asked,
                actor,
                reading -> sound
                        ? Decision.say(Subject.works(), new ListWorded(asked.wordlist(), asked.words()))
                        : Decision.refuse(
                                Reason.of("handover.recordWords", Reason.WORKS_RULE, Wordlists.MOST, Wordlists.LONGEST)
                                        .liftedAt("#" + asked.wordlist().name())));
    }
}
