package wainbook.station.joint;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.sheet.CheckItem;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Joints of the vehicles in the works that are owed a second check. */
@ApplicationScoped
class SecondCheckMatters implements Matters {

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;

    SecondCheckMatters(Ledger ledger, Releases releases, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return Stream.of(Phase.ON_LINE, Phase.OFF_LINE, Phase.FINISHED)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .map(row -> ledger.history(Subject.workOrder(row.number)))
                .flatMap(history -> WorkOrder.of(history).stream().flatMap(order -> owed(history, order)))
                .toList();
    }

    /** By the sheets that the vehicle is bound to, and for stages still to come by those in force for its route. */
    private Stream<OpenMatter> owed(History history, WorkOrder order) {
        return items(order)
                .flatMap(item -> SecondCheck.owed(item, history).stream())
                .map(owed -> matter(order.number(), owed));
    }

    private Stream<CheckItem> items(WorkOrder order) {
        return order.ordered().stages().stream()
                .flatMap(stage -> Optional.ofNullable(order.bindings().get(stage))
                        .map(bound -> releases.sheet(bound.sheet(), bound.revision()))
                        .or(() -> releases.leg(order.ordered().route(), stage)
                                .flatMap(leg -> releases.sheetInForce(leg.checkSheet()))
                                .map(Released::sheet))
                        .stream())
                .flatMap(sheet -> sheet.items().stream());
    }

    private OpenMatter matter(String order, SecondCheck owed) {
        String from = new Formats(day.zone()).moment(owed.from());
        return new OpenMatter(
                Sort.SECOND_CHECK,
                order,
                Words.of("station.secondCheckMatter"),
                Optional.of(owed.item().title()),
                owed.asks().joint(),
                owed.from(),
                List.of(Owner.of(Role.TEAM_LEADER)),
                Due.at(owed.asks()
                        .byKm()
                        .map(km -> Words.of("station.secondCheckByKm", from, km))
                        .orElseGet(() -> Words.of("station.secondCheckFrom", from))),
                Words.of("station.secondCheckBars"),
                "/station/" + order + "?item=" + owed.item().key());
    }
}
