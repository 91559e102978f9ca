package wainbook.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Kinds;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderList;
import wainbook.order.WorkOrderRow;
import wainbook.page.Leaf;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.sheet.CheckItem;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Verdict;
import wainbook.waste.Labels;

/** Looks for a number over all vehicles: the whole of it, or from three characters on what begins with it. */
@ApplicationScoped
class Tracing {

    static final int LEAF = 20;
    static final int PLACES = 10;
    static final int FILE_VEHICLES = 2_000;
    static final int FILE_PLACES = 1_000;

    private static final int BEGINNING = 3;

    private final Ledger ledger;
    private final Releases releases;

    Tracing(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    /** One leaf of vehicles, those with the newest places first. */
    Trace search(String typed, int leaf) {
        return found(typed, leaf, LEAF, PLACES);
    }

    /** All of it, up to what a spreadsheet is good for. */
    Trace all(String typed) {
        return found(typed, 1, FILE_VEHICLES, FILE_PLACES);
    }

    private Trace found(String typed, int leaf, int vehicles, int places) {
        String query = typed.strip();
        String code = Mention.code(query);
        if (code.isEmpty()) {
            return Trace.nothingAsked();
        }
        boolean exact = code.length() < BEGINNING;
        return ledger.drawing(() -> {
            JointRevisions joints = JointRevisions.of(ledger.history(Subject.works()));
            var search = new TracedRow.Search(
                    exact ? TracedRow.exactly(code) : TracedRow.beginning(code), joints.sought(code));
            List<Trace.Vehicle> hits = TracedRow.orders(search, (leaf - 1) * vehicles, vehicles).stream()
                    .map(hit -> vehicle(hit, TracedRow.places(search, hit.workOrder(), places), joints))
                    .toList();
            var found = new Trace(query, exact, List.of(), new Leaf(1, vehicles, 0, ""));
            return new Trace(
                    query,
                    exact,
                    hits,
                    new Leaf(leaf, vehicles, TracedRow.orders(search), "/trace?q=" + found.encoded()));
        });
    }

    private Trace.Vehicle vehicle(TracedRow.Hit hit, List<TracedRow> rows, JointRevisions joints) {
        History history = ledger.history(Subject.workOrder(hit.workOrder()));
        List<Trace.Place> places =
                rows.stream().map(row -> place(row, history, joints)).toList();
        long shown = rows.stream().map(TracedRow::entry).distinct().count();
        WorkOrderRow order = WorkOrderRow.findById(hit.workOrder());
        return new Trace.Vehicle(
                hit.workOrder(),
                Optional.ofNullable(order.vin),
                Optional.ofNullable(order.registration),
                order.operator,
                OrderList.word(order.phase),
                Trace.Dates.of(order),
                places,
                hit.places() - shown);
    }

    private Trace.Place place(TracedRow row, History vehicle, JointRevisions joints) {
        History history = row.saidIn == null ? vehicle : ledger.history(row.stream());
        Entry entry = history.entries().get(Math.toIntExact(row.entryNumber) - 1);
        return new Trace.Place(
                row.traceSort.word(),
                shown(row, joints),
                row.entryNumber,
                path(row),
                row.at,
                entry.moment().who(),
                what(entry),
                entry.saying() instanceof Result said ? Optional.of(said.verdict() == Verdict.PASS) : Optional.empty(),
                Undone.is(entry, history),
                VehicleDoubts.of(history).about(entry.number()).map(VehicleDoubt::containment));
    }

    /** A joint with the revision that was in force when it was recorded. */
    private static String shown(TracedRow row, JointRevisions joints) {
        return row.traceSort == Mention.Sort.JOINT
                ? joints.at(row.at).map(revision -> row.shown + "/" + revision).orElse(row.shown)
                : row.shown;
    }

    /** Where the entry can be read: on the vehicle's page, or at the container that a note emptied. */
    private static String path(TracedRow row) {
        return row.saidIn == null
                ? "/orders/" + row.workOrder + "#entry-" + row.entryNumber
                : Labels.path(row.stream().code());
    }

    /** A check item by its title and stage; anything else by the room it belongs to. */
    private String what(Entry entry) {
        if (entry.saying() instanceof Result said) {
            About about = said.about();
            String item = releases.known(about.sheet(), about.revision())
                    .flatMap(sheet -> sheet.item(about.item()))
                    .map(CheckItem::title)
                    .orElse(about.item());
            return Words.of(
                    "trace.itemAtStage",
                    item,
                    releases.stage(about.stage()).map(Stage::title).orElse(about.stage()));
        }
        String room = Kinds.name(entry.saying().getClass()).replaceAll("\\..*", "");
        return Words.find("trace.room." + room).orElse(room);
    }

    static String word(boolean passed) {
        return Words.of(passed ? "trace.passed" : "trace.failed");
    }

    static String voided() {
        return Words.of("trace.voided");
    }
}
