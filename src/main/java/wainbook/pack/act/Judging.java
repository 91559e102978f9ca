package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Judged;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.Quarantine;
import wainbook.pack.Serials;
import wainbook.page.Words;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/**
 * Judges a pack in quarantine: by a person qualified for live work. Sound only once the watch is over; that releases the
 * vehicle. Defective can be said at any time, and keeps the vehicle held until somebody releases it by hand.
 */
@ApplicationScoped
public class Judging {

    /** What was found. */
    public record ToJudge(UUID id, String serial, Judgement judgement, String words) {}

    private record ToSay(UUID id, String serial, Judgement judgement, String words, Optional<String> vehicle)
            implements Asked {
        @Override
        public List<Subject> writes() {
            Subject pack = Serials.subject(serial);
            return vehicle.map(order -> List.of(pack, Subject.workOrder(order))).orElseGet(() -> List.of(pack));
        }

        @Override
        public Class<? extends Saying> says() {
            return Judged.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    Judging(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> judge(ToJudge asked, Actor actor) {
        Subject pack = Serials.subject(asked.serial());
        Optional<String> vehicle = quarantined(ledger.history(pack)).flatMap(Quarantined::order);
        var toSay = new ToSay(asked.id(), asked.serial(), asked.judgement(), asked.words(), vehicle);
        return ledger.write(toSay, actor, reading -> {
            Person person = Person.of(ledger.history(Subject.person(actor.who())));
            Instant now = reading.moment().at();
            var against = new ArrayList<>(
                    JudgementRule.against(reading.of(pack), asked.judgement(), person, now, day.of(now)));
            JudgementRule.words(asked.words()).ifPresent(against::add);
            if (!against.isEmpty()) {
                return Decision.refuse(against);
            }
            Decision said =
                    Decision.say(pack, new Judged(asked.judgement(), asked.words(), Qualified.authority(person)));
            return release(
                            toSay,
                            quarantined(reading.of(pack)),
                            vehicle.map(Subject::workOrder).map(reading::of))
                    .map(released -> said.andSay(Subject.workOrder(vehicle.orElseThrow()), released))
                    .orElse(said);
        });
    }

    private static Optional<Quarantined> quarantined(History history) {
        return Pack.of(history).flatMap(Pack::quarantine).map(Quarantine::said);
    }

    private static Optional<HoldReleased> release(
            ToSay asked, Optional<Quarantined> quarantined, Optional<History> vehicle) {
        return asked.judgement() == Judgement.SOUND
                ? quarantined
                        .flatMap(Quarantined::hold)
                        .filter(hold -> vehicle.filter(history -> Quarantining.inForce(history, hold))
                                .isPresent())
                        .map(hold -> new HoldReleased(hold, Words.of("pack.releaseReason", asked.serial())))
                : Optional.empty();
    }

    /** What stands against this judgement by whoever looks; asked before a page is drawn. */
    public List<Reason> against(History history, Judgement judgement, Moment now) {
        Person person = Person.of(ledger.history(Subject.person(now.who())));
        return JudgementRule.against(history, judgement, person, now.at(), day.of(now.at()));
    }
}
