package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.Holding;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.Quarantine;
import wainbook.pack.Serials;
import wainbook.pack.Trigger;
import wainbook.pack.WhereFitted;
import wainbook.page.Words;

/**
 * Sets a pack aside as damaged. Anybody may, of any pack, known or not, at any time: it is never refused. Holds the vehicle
 * that it is fitted in; the packs of its lot are held by its standing so.
 */
@ApplicationScoped
public class Quarantining {

    /** What is said of it; everything but the serial may be left out. */
    public record ToQuarantine(
            UUID id,
            String serial,
            Trigger trigger,
            boolean heating,
            Optional<String> place,
            Optional<String> lot,
            Optional<String> words) {

        public ToQuarantine {
            place = shortened(place, 80);
            lot = shortened(lot, 80);
            words = shortened(words, TypedRule.LONGEST_WORDS);
        }

        private static Optional<String> shortened(Optional<String> text, int most) {
            return text.map(String::strip)
                    .filter(one -> !one.isEmpty())
                    .map(one -> one.substring(0, Math.min(most, one.length())));
        }
    }

    /** The same with the vehicle that it is in, whose stream is written too. */
    private record ToSay(
            UUID id,
            String serial,
            Trigger trigger,
            boolean heating,
            Optional<String> place,
            Optional<String> lot,
            Optional<String> words,
            Optional<String> vehicle)
            implements Asked {
        @Override
        public List<Subject> writes() {
            Subject pack = Serials.subject(serial);
            return vehicle.map(order -> List.of(pack, Subject.workOrder(order))).orElseGet(() -> List.of(pack));
        }

        @Override
        public Class<? extends Saying> says() {
            return Quarantined.class;
        }
    }

    private final Ledger ledger;
    private final WhereFitted fitted;

    Quarantining(Ledger ledger, WhereFitted fitted) {
        this.ledger = ledger;
        this.fitted = fitted;
    }

    public Outcome<Entry> quarantine(ToQuarantine asked, Actor actor) {
        var toSay = new ToSay(
                asked.id(),
                asked.serial(),
                asked.trigger(),
                asked.heating(),
                asked.place(),
                asked.lot(),
                asked.words(),
                fitted.order(asked.serial()));
        return ledger.write(toSay, actor, reading -> decide(toSay, reading));
    }

    private static Decision decide(ToSay asked, Reading reading) {
        Subject pack = Serials.subject(asked.serial());
        Optional<Integer> standing = asked.vehicle()
                .flatMap(order -> standing(Pack.of(reading.of(pack)), reading.of(Subject.workOrder(order)), order));
        Optional<Integer> next = asked.vehicle()
                .filter(order -> standing.isEmpty())
                .map(order -> Holding.next(reading.of(Subject.workOrder(order))));
        Decision said = Decision.say(
                pack,
                new Quarantined(
                        asked.trigger(),
                        asked.heating(),
                        asked.place(),
                        asked.lot(),
                        asked.words(),
                        asked.vehicle(),
                        standing.or(() -> next)));
        return next.map(hold -> said.andSay(
                        Subject.workOrder(asked.vehicle().orElseThrow()),
                        new Held(
                                hold,
                                HoldKind.SAFETY,
                                // A vehicle must be free to leave the hall: moving it stays possible.
                                List.of(Stops.WORK, Stops.SIGN),
                                Words.of("pack.holdReason", asked.serial()))))
                .orElse(said);
    }

    /** The hold by which this pack holds this vehicle already. */
    private static Optional<Integer> standing(Optional<Pack> pack, History vehicle, String order) {
        return pack.flatMap(Pack::quarantine)
                .map(Quarantine::said)
                .filter(said -> said.order().equals(Optional.of(order)))
                .flatMap(Quarantined::hold)
                .filter(hold -> inForce(vehicle, hold));
    }

    static boolean inForce(History vehicle, int hold) {
        return WorkOrder.of(vehicle)
                .filter(order -> order.holds().stream().anyMatch(held -> held.hold() == hold))
                .isPresent();
    }
}
