package wainbook.station;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.isolation.WorkUnderPermit;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.ReSequenced;

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
        return vehicle.saying(ReSequenced.class)
                .map(entry -> (ReSequenced) entry.saying())
                .filter(said -> said.bars().contains(bar))
                .filter(said -> !done(said, vehicle))
                .map(ReSequenced::about)
                .map(About::line)
                .distinct()
                .toList();
    }

    private boolean done(ReSequenced said, History vehicle) {
        return WorkOrder.of(vehicle)
                .flatMap(order -> StageRecord.of(vehicle, order, said.toStage(), releases::sheet))
                .flatMap(record -> record.line(said.about().line()))
                .filter(item -> item.status().settled())
                .isPresent();
    }
}
