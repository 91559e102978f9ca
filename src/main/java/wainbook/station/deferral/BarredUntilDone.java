package wainbook.station.deferral;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.isolation.permit.WorkUnderPermit;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.station.DeferredWork;
import wainbook.station.StationSaying.Bar;

/** What work that was given to a later stage bars until it is done: driving, energising, loading. */
@ApplicationScoped
public class BarredUntilDone implements WorkUnderPermit {

    private final Releases releases;

    BarredUntilDone(Releases releases) {
        this.releases = releases;
    }

    @Override
    public List<String> barringEnergising(History vehicle) {
        return barring(Bar.ENERGISING, vehicle);
    }

    /** The items, by sheet and key, that bar this now. */
    public List<String> barring(Bar bar, History vehicle) {
        return WorkOrder.of(vehicle).map(order -> DeferredWork.open(vehicle, order, releases::sheet)).stream()
                .flatMap(List::stream)
                .filter(work -> work.bars().contains(bar))
                .map(work -> work.about().line())
                .distinct()
                .toList();
    }
}
