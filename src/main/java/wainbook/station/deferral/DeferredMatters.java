package wainbook.station.deferral;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.sheet.CheckItem;
import wainbook.station.DeferredWork;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.work.Workplace;

/** Work that was given to a later stage and is not done. */
@ApplicationScoped
class DeferredMatters implements Matters {

    private final Ledger ledger;
    private final Workplace workplace;
    private final Releases releases;

    DeferredMatters(Ledger ledger, Workplace workplace, Releases releases) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.releases = releases;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return DeferredRow.orders().stream()
                .map(order -> ledger.history(Subject.workOrder(order)))
                .flatMap(history -> WorkOrder.of(history).stream().flatMap(order -> deferred(history, order).stream()))
                .toList();
    }

    private List<OpenMatter> deferred(History history, WorkOrder order) {
        return workplace.deferred(history, order).stream()
                .map(work -> matter(order.number(), work))
                .toList();
    }

    /** Whoever re-sequenced an item sees to it that it is done; work carried over names its owner. */
    private OpenMatter matter(String order, DeferredWork work) {
        boolean carried = work.owner().isPresent();
        String toStage = releases.stage(work.toStage()).map(Stage::title).orElse(work.toStage());
        return new OpenMatter(
                carried ? Sort.CARRIED_OVER : Sort.RE_SEQUENCED,
                order,
                Words.of(carried ? "station.carriedOverMatter" : "station.reSequencedMatter"),
                Optional.of(releases.sheet(work.about().sheet(), work.about().revision())
                        .item(work.about().item())
                        .map(CheckItem::title)
                        .orElse(work.about().item())),
                reason(work),
                work.entry().moment().at(),
                List.of(Owner.person(work.owner().orElse(work.entry().moment().who()))),
                Due.at(toStage),
                carried
                        ? Words.of("station.barsGate", toStage)
                        : work.bars().stream()
                                .map(bar -> Words.of("station.barShort." + bar.name()))
                                .collect(Collectors.joining(", ")),
                "/orders/" + order + "#entry-" + work.entry().number());
    }

    private static String reason(DeferredWork work) {
        if (work.entry().saying() instanceof CarriedOver said) {
            return said.reason();
        }
        return ((ReSequenced) work.entry().saying()).reason();
    }
}
