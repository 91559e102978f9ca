package wainbook.order.specification;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import wainbook.engineering.energy.driving.Trace;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.order.fitted.FittedLook;
import wainbook.order.fitted.Match;
import wainbook.process.ComponentLibrary;
import wainbook.works.shift.WorksDay;

/** Gathers what the table of packs is worked from. */
@ApplicationScoped
public class SpecificationLook {

    /** Orders of the same kind that are looked at. */
    private static final int ASKED = 10;

    private final Ledger ledger;
    private final EvidenceFiles files;
    private final WorksDay day;
    private final Weighings weighings;
    private final FittedLook fitted;

    SpecificationLook(Ledger ledger, EvidenceFiles files, WorksDay day, Weighings weighings, FittedLook fitted) {
        this.ledger = ledger;
        this.files = files;
        this.day = day;
        this.weighings = weighings;
        this.fitted = fitted;
    }

    /** @param history of an order that is there */
    public Worked worked(History history, Instant at) {
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        Specification specification = Specification.of(history);
        return new Worked(
                order,
                specification,
                ComponentLibrary.of(ledger.history(Subject.works()))
                        .of(order.ordered().vehicleKind()),
                day.of(at),
                specification.duty().flatMap(said -> said.what().recorded()).stream()
                        .flatMap(way -> trace(way).stream())
                        .toList(),
                weighings.received(history),
                weighings.asBuilt(
                        history,
                        specification
                                .chassis()
                                .map(said -> said.what().frontAxles())
                                .orElse(1)),
                fitted(history));
    }

    /** The specification that stands against what is fitted. */
    public Match fitted(History history) {
        return fitted.match(history, Specification.of(history).standing().map(Specification.Said::what));
    }

    private Optional<Trace> trace(Duty.RecordedWay way) {
        return files.bytes(way.file().sha256())
                .map(bytes -> TraceFile.read(new String(bytes, StandardCharsets.UTF_8)))
                .flatMap(TraceFile::trace);
    }

    /** The vehicle that was stated last for another order of the same kind: its figures are offered, never stated silently. */
    public Optional<ChassisFigures> alike(WorkOrder order) {
        return WorkOrderRow.<WorkOrderRow>find(
                        "vehicleKind = ?1 and number <> ?2 order by number desc",
                        order.ordered().vehicleKind(),
                        order.number())
                .page(0, ASKED)
                .list()
                .stream()
                .map(row -> Specification.of(ledger.history(Subject.workOrder(row.number))))
                .flatMap(other -> other.chassis().stream())
                .map(Specification.Said::what)
                .findFirst();
    }
}
