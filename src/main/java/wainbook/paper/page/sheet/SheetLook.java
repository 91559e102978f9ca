package wainbook.paper.page.sheet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.isolation.Isolation;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.page.ScanCode;
import wainbook.page.Words;
import wainbook.paper.PaperForm;
import wainbook.paper.Sort;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.VehicleKinds;
import wainbook.process.plan.Plan;
import wainbook.station.paper.PaperItem;
import wainbook.station.paper.Paperwork;

/** Draws forms as they were when their numbers were given out: printed again, a form says the same. */
@ApplicationScoped
public class SheetLook {

    private final Ledger ledger;
    private final Releases releases;
    private final Paperwork paperwork;
    private final VehicleKinds kinds;

    SheetLook(Ledger ledger, Releases releases, Paperwork paperwork, VehicleKinds kinds) {
        this.ledger = ledger;
        this.releases = releases;
        this.paperwork = paperwork;
        this.kinds = kinds;
    }

    public Sheet of(PaperForm form) {
        Optional<History> vehicle = form.vehicle().map(number -> then(form, number));
        return new Sheet(
                form,
                ScanCode.of(form.code()),
                vehicle.map(this::about).orElse(List.of()),
                vehicle.map(known -> electrical(known, form.printed().moment().at()))
                        .orElse(""),
                vehicle.map(SheetLook::standing).orElse(List.of()),
                form.sort() == Sort.ITEMS ? vehicle.map(paperwork::open).orElse(List.of()) : List.of(),
                IsolationSections.ticks(),
                sections(form, vehicle));
    }

    private static String electrical(History vehicle, Instant at) {
        Isolation then = Isolation.of(vehicle).at(at);
        String locks = then.locks().stream()
                .map(lock -> Words.of("paper.lockLine", lock.number(), lock.owner()))
                .collect(Collectors.joining(", "));
        return Words.of("isolation.state." + then.state().name()) + ". "
                + (locks.isEmpty() ? Words.of("paper.noLockOn") : Words.of("paper.locksOn", locks));
    }

    /** The items that a print of open items has on it. */
    public List<PaperItem> items(PaperForm form) {
        return form.vehicle().map(number -> paperwork.open(then(form, number))).orElse(List.of());
    }

    /** The parts of an isolation form for a vehicle, by the plan in force when it was printed. */
    public IsolationSections isolation(PaperForm form, History vehicle) {
        Optional<Plan> plan = WorkOrder.of(vehicle)
                .flatMap(order -> releases.planAt(
                        order.ordered().variant(), form.printed().moment().at()));
        return new IsolationSections(plan, Isolation.of(vehicle).aboard());
    }

    private List<Section> sections(PaperForm form, Optional<History> vehicle) {
        return switch (form.sort()) {
            case ITEMS -> List.of();
            case ISOLATION ->
                vehicle.map(known -> isolation(form, known))
                        .orElseGet(() -> new IsolationSections(Optional.empty(), List.of()))
                        .all();
            case PERMIT -> List.of(PermitSections.signs());
        };
    }

    /** The vehicle up to what was on record when the number was given out. */
    private History then(PaperForm form, String number) {
        History now = ledger.history(Subject.workOrder(number));
        long seen = form.said().seen().orElse(now.number());
        return new History(
                now.subject(),
                now.entries().stream().filter(entry -> entry.number() <= seen).toList());
    }

    private List<String> about(History vehicle) {
        return WorkOrder.of(vehicle).map(this::about).orElse(List.of());
    }

    private List<String> about(WorkOrder order) {
        var lines = new ArrayList<String>();
        lines.add(Words.of(
                "paper.vehicleLine", order.number(), kinds.title(order.ordered().vehicleKind())));
        order.at()
                .map(Place::place)
                .map(place -> releases.station(place).map(Station::title).orElse(place))
                .ifPresent(place -> lines.add(Words.of(
                        "paper.standsAt",
                        place,
                        order.stage().flatMap(releases::stage).map(Stage::title).orElse("–"))));
        order.binding()
                .ifPresent(binding -> lines.add(Words.of("paper.sheetLine", binding.sheet(), binding.revision())));
        return lines;
    }

    private static List<String> standing(History vehicle) {
        var lines = new ArrayList<String>();
        WorkOrder.of(vehicle)
                .ifPresent(order -> order.holds()
                        .forEach(hold -> lines.add(Words.of("paper.holdLine", hold.hold(), hold.reason()))));
        Nonconformities.of(vehicle)
                .awaitingDisposition()
                .forEach(open -> lines.add(Words.of(
                        "paper.nonconformityLine", open.number(), open.opened().what())));
        return lines;
    }
}
