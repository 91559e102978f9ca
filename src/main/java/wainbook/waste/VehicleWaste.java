package wainbook.waste;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.waste.WasteSaying.EngineMadeUnusable;

/** What the waste record says of one vehicle, for whoever gathers its documents. */
@ApplicationScoped
public class VehicleWaste {

    private final Ledger ledger;
    private final TakenOut takenOut;

    VehicleWaste(Ledger ledger, TakenOut takenOut) {
        this.ledger = ledger;
        this.takenOut = takenOut;
    }

    /** How its hazardous waste stands, or its other waste; empty where none was taken out. */
    public Optional<Papers> papers(History history, boolean hazardous) {
        List<Thing> waste = takenOut.of(history).stream()
                .filter(thing -> thing.fate().waste() && thing.row().hazardous() == hazardous)
                .toList();
        List<Container> holding = waste.stream()
                .flatMap(thing -> thing.container().stream())
                .distinct()
                .flatMap(label -> Container.of(ledger.history(Labels.subject(label))).stream())
                .toList();
        return waste.isEmpty() ? Optional.empty() : Optional.of(Papers.of(waste, holding));
    }

    public Optional<EngineMadeUnusable> engine(History history) {
        return Said.of(history).engine().map(entry -> (EngineMadeUnusable) entry.saying());
    }
}
