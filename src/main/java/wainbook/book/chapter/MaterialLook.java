package wainbook.book.chapter;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.book.page.Vehicle;
import wainbook.book.page.VehicleLook;
import wainbook.book.photograph.Photographs;
import wainbook.book.photograph.Small;
import wainbook.book.telling.Names;
import wainbook.book.telling.ReleasedNames;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.ledger.stream.StoredStream;
import wainbook.ledger.stream.StoredStreams;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.CalibrationLook;
import wainbook.page.Formats;
import wainbook.page.calculation.Calculations;
import wainbook.process.Releases;
import wainbook.process.VehicleKinds;
import wainbook.station.work.Workplace;
import wainbook.works.Person;
import wainbook.works.WorksSaying.Named;
import wainbook.works.shift.WorksDay;

/** Brings together what a book is written from. */
@ApplicationScoped
public class MaterialLook {

    /** A book has no reader whose duties matter. */
    private static final Vehicle.Doors NO_DOORS =
            new Vehicle.Doors(false, false, false, false, false, false, false, false, false, false, false, false);

    private static final String NOBODY = "book";

    private final Ledger ledger;
    private final StoredStreams streams;
    private final VehicleLook look;
    private final Workplace workplace;
    private final Releases releases;
    private final VehicleKinds kinds;
    private final Calculations calculations;
    private final WorksDay day;
    private final CalibrationLook calibrations;
    private final EvidenceFiles files;

    MaterialLook(
            Ledger ledger,
            StoredStreams streams,
            VehicleLook look,
            Workplace workplace,
            Releases releases,
            VehicleKinds kinds,
            Calculations calculations,
            WorksDay day,
            CalibrationLook calibrations,
            EvidenceFiles files) {
        this.ledger = ledger;
        this.streams = streams;
        this.look = look;
        this.workplace = workplace;
        this.releases = releases;
        this.kinds = kinds;
        this.calculations = calculations;
        this.day = day;
        this.calibrations = calibrations;
        this.files = files;
    }

    /** Empty when nothing was ordered under this number. */
    public Optional<Material> of(String order) {
        Subject subject = Subject.workOrder(order);
        return ledger.drawing(() -> streams.of(subject).flatMap(stored -> {
            History history = upTo(ledger.history(subject), stored);
            return WorkOrder.of(history).map(known -> of(stored, history, known));
        }));
    }

    /** What was said between reading the bytes and reading the entries is no part of the book. */
    private static History upTo(History history, StoredStream stored) {
        return history.number() == stored.number()
                ? history
                : new History(history.subject(), history.entries().subList(0, (int)
                        Math.min(stored.number(), history.number())));
    }

    private Material of(StoredStream stored, History history, WorkOrder order) {
        Names names = ReleasedNames.withNumbers(releases, day.zone());
        Vehicle vehicle = look.of(history, order, Moment.of(NOBODY, stored.at()), "", NO_DOORS, names);
        return new Material(
                history,
                order,
                stored,
                vehicle,
                order.gates().stream()
                        .flatMap(stage -> workplace.record(history, order, stage).stream())
                        .toList(),
                instruments(history, stored),
                people(history, stored),
                releases.jointsAt(stored.at()),
                calculations,
                names,
                new Formats(day.zone()),
                ledger.history(Subject.works())
                        .last(Named.class)
                        .map(Named::title)
                        .orElse(""),
                kinds.title(order.ordered().vehicleKind()),
                Photographs.of(history, vehicle.record()),
                small(history),
                calibrations.compared(history, stored.at()));
    }

    /** One after the other, so that no more than one whole photograph lies in memory. */
    private Map<String, Small> small(History history) {
        Map<String, Small> found = new LinkedHashMap<>();
        ConditionPart.photographs(history)
                .map(EvidenceFile::sha256)
                .distinct()
                .forEach(sha256 -> files.bytes(sha256).flatMap(Small::of).ifPresent(small -> found.put(sha256, small)));
        return found;
    }

    private Map<String, History> instruments(History history, StoredStream stored) {
        Map<String, History> found = new LinkedHashMap<>();
        Uses.of(history)
                .forEach(use -> found.computeIfAbsent(
                        use.instrument(),
                        code -> ledger.history(Subject.instrument(code)).upTo(stored.at())));
        return found;
    }

    private Map<String, Person> people(History history, StoredStream stored) {
        Map<String, Person> found = new LinkedHashMap<>();
        Acting.in(history)
                .keySet()
                .forEach(number -> found.put(
                        number, Person.of(ledger.history(Subject.person(number)).upTo(stored.at()))));
        return found;
    }
}
