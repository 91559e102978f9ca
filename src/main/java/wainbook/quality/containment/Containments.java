package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Releases;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Chained;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Touched;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.containment.basis.BasisRow;
import wainbook.quality.containment.doubt.Doubt;
import wainbook.quality.containment.doubt.Found;
import wainbook.quality.containment.doubt.Readings;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.station.PaperMark;
import wainbook.station.StationSaying.Voided;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.ToolChecked;
import wainbook.works.instruments.InDoubt;

/** Finds what a doubt touches, and what was opened about it. */
@ApplicationScoped
public class Containments {

    private final Ledger ledger;
    private final Readings readings;

    Containments(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.readings = new Readings(about -> releases.sheet(about.sheet(), about.revision())
                .item(about.item())
                .map(CheckItem::asks)
                .filter(Ask.Table.class::isInstance)
                .map(Ask.Table.class::cast));
    }

    public Optional<Containment> named(String code) {
        return ContainmentRow.<ContainmentRow>findByIdOptional(code)
                .flatMap(row -> Containment.of(ledger.history(Subject.parse(row.subject))).stream()
                        .filter(one -> one.code().equals(code))
                        .findFirst());
    }

    /** Every reading that is touched, by work order. */
    Map<String, List<Doubted>> touched(About about, Window window, Optional<Errors> errors) {
        Doubt doubt = about.sort() == Sort.INSTRUMENT
                ? Doubt.of(window, errors, ledger.history(Subject.instrument(about.code())))
                : new Doubt(window, Optional.empty(), List.of());
        Map<String, List<Doubted>> touched = new LinkedHashMap<>();
        for (String order : BasisRow.orders(about, window)) {
            List<Doubted> judged = judged(order, about, window, doubt);
            if (!judged.isEmpty()) {
                touched.put(order, judged);
            }
        }
        return touched;
    }

    private List<Doubted> judged(String order, About about, Window window, Doubt doubt) {
        History history = ledger.history(Subject.workOrder(order));
        Set<UUID> voided = history.saying(Voided.class)
                .map(entry -> ((Voided) entry.saying()).entry())
                .collect(Collectors.toSet());
        return history.entries().stream()
                .map(entry -> PaperMark.asDone(history, entry))
                .filter(entry -> BasisRow.of(entry)
                        .filter(basis -> basis.restsOn(about, window))
                        .isPresent())
                .flatMap(entry ->
                        found(entry, about.sort()).stream().map(one -> doubt.judge(one, voided.contains(entry.id()))))
                .toList();
    }

    private List<Found> found(Entry entry, Sort sort) {
        return sort == Sort.INSTRUMENT ? readings.of(entry) : List.of(readings.whole(entry));
    }

    static List<Touched> counted(Map<String, List<Doubted>> touched) {
        return touched.entrySet().stream()
                .map(vehicle -> new Touched(
                        vehicle.getKey(),
                        count(vehicle.getValue(), Sureness.SURE_OUT),
                        count(vehicle.getValue(), Sureness.POSSIBLE),
                        count(vehicle.getValue(), Sureness.SAFE)))
                .toList();
    }

    private static int count(List<Doubted> readings, Sureness verdict) {
        return (int) readings.stream()
                .filter(reading -> reading.verdict() == verdict)
                .count();
    }

    /** Tools that were checked on the instrument in the window: next in the chain. */
    List<Chained> chain(String instrument, Window window) {
        return ledger.subjects(Subject.Sort.INSTRUMENT).stream()
                .flatMap(subject -> {
                    List<Entry> checks = ledger.history(subject)
                            .saying(ToolChecked.class)
                            .filter(entry ->
                                    ((ToolChecked) entry.saying()).tester().equals(instrument))
                            .filter(entry -> !entry.moment().at().isBefore(window.from())
                                    && !entry.moment().at().isAfter(window.to()))
                            .toList();
                    return checks.stream()
                            .skip(Math.max(0, checks.size() - 1L))
                            .map(last -> new Chained(
                                    subject.code(), checks.size(), last.moment().at()));
                })
                .toList();
    }

    /** Vehicles that a containment touches and that have not heard of it, or not of its figures: a crash came between. */
    public List<String> untold(Containment containment) {
        long heard = containment.vehicles().size();
        if (containment.workedOut().isEmpty() && VehicleDoubtRow.count("containment", containment.code()) == heard) {
            return List.of();
        }
        return containment.vehicles().stream()
                .map(Touched::order)
                .filter(order -> ledger.history(Subject.workOrder(order))
                        .entry(Telling.tellingId(containment.latest().id(), order))
                        .isEmpty())
                .toList();
    }

    /** An entry that puts an instrument in doubt and that nothing was opened for: a crash came between. */
    public record Unopened(String instrument, Entry entry) {}

    public List<Unopened> unopened() {
        return ledger.subjects(Subject.Sort.INSTRUMENT).stream()
                .flatMap(subject ->
                        unopened(ledger.history(subject)).stream().map(entry -> new Unopened(subject.code(), entry)))
                .toList();
    }

    private static List<Entry> unopened(History instrument) {
        List<Containment> opened = Containment.of(instrument);
        return instrument.entries().stream()
                .filter(InDoubt::by)
                .filter(entry -> opened.stream().noneMatch(one -> one.answers(entry.id())))
                .toList();
    }

    /** Whether an instrument is itself in doubt: nothing measured with it settles anything. */
    boolean inDoubt(String instrument) {
        History history = ledger.history(Subject.instrument(instrument));
        return !unopened(history).isEmpty()
                || Containment.of(history).stream()
                        .filter(Containment::isOpen)
                        .anyMatch(one -> history.saying(Calibrated.class)
                                .noneMatch(
                                        entry -> entry.number() > one.opened().number()));
    }
}
