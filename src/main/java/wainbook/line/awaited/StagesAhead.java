package wainbook.line.awaited;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.gate.Gate;
import wainbook.gate.Gate.Standing;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckItem.PartUse;
import wainbook.process.sheet.CheckSheet;
import wainbook.station.DeferredWork;
import wainbook.station.work.Workplace;

/** The stages of a vehicle's route, what their sheets fit, and whether their gates are signed. */
@ApplicationScoped
public class StagesAhead {

    /** @param parts their codes, as the items of its sheet name them */
    public record Stage(String code, String title, List<String> parts, boolean signed) {
        public Stage {
            parts = List.copyOf(parts);
        }
    }

    private final Releases releases;
    private final Workplace workplace;

    StagesAhead(Releases releases, Workplace workplace) {
        this.releases = releases;
        this.workplace = workplace;
    }

    public List<Stage> of(History history, WorkOrder order) {
        List<DeferredWork> deferred = workplace.deferred(history, order);
        return order.ordered().stages().stream()
                .map(stage -> new Stage(
                        stage,
                        releases.stage(stage).map(known -> known.title()).orElse(stage),
                        Stream.concat(
                                        sheet(order, stage).stream().flatMap(sheet -> sheet.items().stream()),
                                        brought(deferred, stage))
                                .flatMap(StagesAhead::parts)
                                .distinct()
                                .sorted()
                                .toList(),
                        signed(history, order, stage)))
                .toList();
    }

    /** What was put off to it from other stages. */
    private Stream<CheckItem> brought(List<DeferredWork> deferred, String stage) {
        return deferred.stream()
                .filter(work -> work.toStage().equals(stage))
                .map(DeferredWork::about)
                .flatMap(about -> releases.sheet(about.sheet(), about.revision()).item(about.item()).stream());
    }

    /** The sheet that the vehicle is bound to there, or else the one in force for its route. */
    private Optional<CheckSheet> sheet(WorkOrder order, String stage) {
        return Optional.ofNullable(order.bindings().get(stage))
                .map(bound -> releases.sheet(bound.sheet(), bound.revision()))
                .or(() -> releases.leg(order.ordered().route(), stage)
                        .flatMap(leg -> releases.sheetInForce(leg.checkSheet()))
                        .map(Released::sheet));
    }

    private static Stream<String> parts(CheckItem item) {
        Stream<String> asked = item.asks() instanceof Ask.Serial serial
                ? Stream.of(serial.part())
                : item.asks() instanceof Ask.Lot lot ? Stream.of(lot.part()) : Stream.empty();
        return Stream.concat(item.parts().stream().map(PartUse::part), asked);
    }

    private boolean signed(History history, WorkOrder order, String stage) {
        return workplace
                .record(history, order, stage)
                .map(record -> Gate.of(history, record).standing())
                .filter(Standing.SIGNED::equals)
                .isPresent();
    }
}
