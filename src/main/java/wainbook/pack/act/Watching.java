package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
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
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Watched;
import wainbook.pack.Quarantine;
import wainbook.pack.Serials;
import wainbook.pack.watch.FireRule;
import wainbook.pack.watch.Temperatures;

/** Reads the temperature of a pack in quarantine. Anybody may: a reading that is made counts, early or late. */
@ApplicationScoped
public class Watching {

    /** What was read, both in °C. */
    public record ToWatch(UUID id, String serial, BigDecimal packC, BigDecimal ambientC, Optional<String> words)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Serials.subject(serial));
        }

        @Override
        public Class<? extends Saying> says() {
            return Watched.class;
        }
    }

    private final Ledger ledger;

    Watching(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> watch(ToWatch asked, Actor actor) {
        Subject subject = Serials.subject(asked.serial());
        return ledger.write(asked, actor, reading -> {
            Optional<Quarantine> quarantine =
                    Pack.of(reading.of(subject)).flatMap(Pack::quarantine).filter(Quarantine::stands);
            var against = new ArrayList<Reason>();
            if (quarantine.isEmpty()) {
                against.add(Reason.of("pack.notInQuarantine", Reason.WORKS_RULE, asked.serial())
                        .liftedAt("/packs/damaged?serial=" + asked.serial()));
            }
            TypedRule.celsius(asked.packC(), "packC").ifPresent(against::add);
            TypedRule.celsius(asked.ambientC(), "ambientC").ifPresent(against::add);
            TypedRule.words(asked.words()).ifPresent(against::add);
            if (!against.isEmpty()) {
                return Decision.refuse(against);
            }
            var now = new Temperatures(reading.moment().at(), asked.packC(), asked.ambientC());
            return Decision.say(
                    subject,
                    new Watched(
                            asked.packC(),
                            asked.ambientC(),
                            FireRule.alarms(quarantine.orElseThrow().readings(), now),
                            asked.words()));
        });
    }
}
