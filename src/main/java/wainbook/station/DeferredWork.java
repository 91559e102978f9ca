package wainbook.station;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.ReSequenced;

/**
 * Work that was given to a later stage.
 *
 * @param entry that gave it there
 * @param bars what must not be done until it is finished; none for work carried over
 * @param owner who finishes it; absent for work re-sequenced
 */
public record DeferredWork(Entry entry, About about, String toStage, List<Bar> bars, Optional<String> owner) {

    public DeferredWork {
        bars = List.copyOf(bars);
    }

    /** What is not done yet, oldest first. */
    public static List<DeferredWork> open(History history, WorkOrder order, StageRecord.Sheets sheets) {
        return history.entries().stream()
                .flatMap(entry -> of(entry).stream())
                .filter(work -> work.isOpen(history, order, sheets))
                .toList();
    }

    /** The stages that work was given away from, done since or not. */
    public static Set<String> from(History history) {
        return history.entries().stream()
                .flatMap(entry -> of(entry).stream())
                .map(work -> work.about().stage())
                .collect(Collectors.toSet());
    }

    private static Optional<DeferredWork> of(Entry entry) {
        if (entry.saying() instanceof ReSequenced said) {
            return Optional.of(new DeferredWork(entry, said.about(), said.toStage(), said.bars(), Optional.empty()));
        }
        return entry.saying() instanceof CarriedOver said
                ? Optional.of(
                        new DeferredWork(entry, said.about(), said.toStage(), List.of(), Optional.of(said.owner())))
                : Optional.empty();
    }

    /** Open too while the vehicle has not come to the stage. */
    private boolean isOpen(History history, WorkOrder order, StageRecord.Sheets sheets) {
        return StageRecord.of(history, order, toStage, sheets)
                .flatMap(record -> record.line(about.line()))
                .map(ItemState::status)
                .map(status -> !status.settled())
                .orElse(true);
    }
}
