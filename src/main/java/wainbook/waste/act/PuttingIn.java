package wainbook.waste.act;

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
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.TakenOut;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PlacingVoided;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.PutInVoided;

/** Puts something taken out of a vehicle into a container: said of both, so that the two add up. */
@ApplicationScoped
public class PuttingIn {

    public record ToPut(UUID id, String label, String order, String thing) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label), Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PutIn.class;
        }
    }

    /** @param reason why it was never in there */
    public record ToVoid(UUID id, String label, String order, String thing, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label), Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PutInVoided.class;
        }
    }

    private final Ledger ledger;
    private final TakenOut takenOut;

    PuttingIn(Ledger ledger, TakenOut takenOut) {
        this.ledger = ledger;
        this.takenOut = takenOut;
    }

    public Outcome<Entry> put(ToPut asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToPut asked, Reading reading) {
        Subject order = Numbers.subject(asked.order());
        Subject container = Labels.subject(asked.label());
        Optional<Container> into = Container.of(reading.of(container));
        Optional<Thing> thing = takenOut.of(reading.of(order), asked.thing());
        List<Reason> against = PutInRule.against(into, asked.label(), thing, asked.thing());
        return against.isEmpty() ? said(thing.orElseThrow(), container, order) : Decision.refuse(against);
    }

    /** The two lines that one putting in is, so that they can be tried without a ledger. */
    static Decision said(Thing thing, Subject container, Subject order) {
        return Decision.say(
                        container, new PutIn(order.code(), thing.key(), thing.what(), thing.massKg(), thing.volumeL()))
                .andSay(
                        order,
                        new Placed(
                                thing.key(),
                                thing.what(),
                                container.code(),
                                thing.row().code(),
                                thing.massKg()));
    }

    /** Takes back what was said by mistake; not once the container has left. */
    public Outcome<Entry> undo(ToVoid asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<Container> known = Container.of(reading.of(Labels.subject(asked.label())));
            var against = new ArrayList<Reason>();
            if (known.filter(container -> container.holds(asked.order(), asked.thing()))
                    .isEmpty()) {
                against.add(Reason.of("waste.notInThere", Reason.WORKS_RULE, asked.label()));
            }
            if (known.flatMap(Container::collectedBy).isPresent()) {
                against.add(Reason.of("waste.gone", Reason.WORKS_RULE, asked.label()));
            }
            Typed.words(asked.reason(), "reason").ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(
                                    Labels.subject(asked.label()),
                                    new PutInVoided(asked.order(), asked.thing(), asked.reason()))
                            .andSay(
                                    Numbers.subject(asked.order()),
                                    new PlacingVoided(asked.thing(), asked.label(), asked.reason()))
                    : Decision.refuse(against);
        });
    }
}
