package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
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
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.ContainerSealed;

/** Seals a container: nothing more goes in, and it waits to be collected. */
@ApplicationScoped
public class Closing {

    public record ToSeal(UUID id, String label) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label));
        }

        @Override
        public Class<? extends Saying> says() {
            return ContainerSealed.class;
        }
    }

    private final Ledger ledger;

    Closing(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> seal(ToSeal asked, Actor actor) {
        Subject subject = Labels.subject(asked.label());
        return ledger.write(asked, actor, reading -> {
            Optional<Container> container = Container.of(reading.of(subject));
            return container
                    .filter(Container::open)
                    .map(known -> Decision.say(subject, new ContainerSealed(known.massKg())))
                    .orElseGet(() -> Decision.refuse(against(container, asked.label())));
        });
    }

    private static Reason against(Optional<Container> container, String label) {
        return container.isEmpty()
                ? Reason.of("waste.noContainer", Reason.WORKS_RULE, label).liftedAt("/waste")
                : Reason.of("waste.containerClosed", Reason.WORKS_RULE, label).liftedAt(Labels.path(label));
    }
}
