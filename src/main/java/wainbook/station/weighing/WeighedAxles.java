package wainbook.station.weighing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.specification.Weighings;
import wainbook.process.Releases;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Tabled;

/**
 * Weighings by the items of the sheets that the works names so: {@code received} of the survey, a table with front and rear, and those
 * of {@link AxleOfItem} in the final sheet.
 */
@ApplicationScoped
class WeighedAxles implements Weighings {

    private static final String RECEIVED = "received";

    private final Releases releases;

    WeighedAxles(Releases releases) {
        this.releases = releases;
    }

    @Override
    public Optional<Received> received(History history) {
        return items(history)
                .filter(item -> item.key().equals(RECEIVED))
                .flatMap(item -> item.passing().stream())
                .map(Entry::saying)
                .filter(Tabled.class::isInstance)
                .map(Tabled.class::cast)
                .filter(said -> said.cells().size() == 2)
                .map(said -> new Received(
                        said.cells().get(0),
                        said.cells().get(1),
                        said.about().sheet() + " · " + said.about().item()))
                .findFirst();
    }

    @Override
    public List<AxleWeighed> asBuilt(History history, int frontAxles) {
        return items(history)
                .flatMap(item -> AxleOfItem.axle(item.key(), frontAxles)
                        .flatMap(axle -> item.passing()
                                .map(Entry::saying)
                                .filter(Measured.class::isInstance)
                                .map(Measured.class::cast)
                                .map(said -> new AxleWeighed(axle, said.reading(), item.key())))
                        .stream())
                .sorted(Comparator.comparingInt(AxleWeighed::axle))
                .toList();
    }

    private Stream<ItemState> items(History history) {
        return WorkOrder.of(history).stream()
                .flatMap(order -> order.gates().stream()
                        .flatMap(stage -> StageRecord.of(history, order, stage, releases::sheet).stream()))
                .flatMap(record -> record.items().stream());
    }
}
