package wainbook.safety.miss;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.safety.SafetySaying.NearMissReported;
import wainbook.safety.SafetySaying.NearMissTold;
import wainbook.safety.Surely;

/** Reports a near miss. Anybody may, about anything, with no word or many: no rule stands against it. */
@ApplicationScoped
public class Reporting {

    /** What is asked; that somebody touched the button is enough. */
    public record ToReport(UUID id, Optional<String> order, Optional<String> station, Optional<String> words)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return NearMissReported.class;
        }

        private ToReport under(UUID another) {
            return new ToReport(another, order, station, words);
        }
    }

    /** Words that come later. */
    public record ToTell(UUID id, int nearMiss, String words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return NearMissTold.class;
        }
    }

    private final Ledger ledger;

    Reporting(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> report(ToReport asked, Actor actor) {
        return Surely.written(
                asked.id(),
                id -> ledger.write(
                        asked.under(id),
                        actor,
                        reading -> Decision.say(
                                Subject.works(),
                                new NearMissReported(
                                        NearMisses.of(reading.of(Subject.works()))
                                                .next(),
                                        asked.order(),
                                        asked.station(),
                                        asked.words()))));
    }

    public Outcome<Entry> tell(ToTell asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against =
                    MissRules.tell(NearMisses.of(reading.of(Subject.works())).number(asked.nearMiss()), asked);
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new NearMissTold(asked.nearMiss(), asked.words()))
                    : Decision.refuse(against);
        });
    }
}
