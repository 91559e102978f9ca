package wainbook.order.fitted;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder;
import wainbook.order.duty.Chosen;
import wainbook.process.ComponentLibrary;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.component.Component;
import wainbook.process.sheet.CheckSheet;

/** Brings together what was specified, what the route fits and what is fitted. */
@ApplicationScoped
public class FittedLook {

    private final Ledger ledger;
    private final Releases releases;
    private final FittedParts fitted;

    FittedLook(Ledger ledger, Releases releases, FittedParts fitted) {
        this.ledger = ledger;
        this.releases = releases;
        this.fitted = fitted;
    }

    /** @param history of an order that is there */
    public Match match(History history, Optional<Chosen> chosen) {
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        return Match.of(
                order.number(),
                order.ordered().route(),
                chosen,
                chosen.map(one -> library(order, one)).orElse(List.of()),
                planned(order),
                chosen.isPresent() ? fitted.of(history) : List.of());
    }

    private List<Component> library(WorkOrder order, Chosen chosen) {
        return ComponentLibrary.of(ledger.history(Subject.works()), chosen.componentsRevision())
                .map(library -> library.of(order.ordered().vehicleKind()).components())
                .orElse(List.of());
    }

    /** By the sheets that the vehicle is bound to, and by those in force where it has not been yet. */
    private Planned planned(WorkOrder order) {
        return Planned.of(
                order.ordered().stages().stream()
                        .flatMap(stage -> sheet(order, stage))
                        .toList(),
                order.facts());
    }

    private Stream<CheckSheet> sheet(WorkOrder order, String stage) {
        Binding bound = order.bindings().get(stage);
        return bound != null
                ? Stream.of(releases.sheet(bound.sheet(), bound.revision()))
                : releases
                        .leg(order.ordered().route(), stage)
                        .map(Route.Leg::checkSheet)
                        .flatMap(releases::sheetInForce)
                        .map(Released::sheet)
                        .stream();
    }
}
