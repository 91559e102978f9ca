package wainbook.quality.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.calibration.Setting;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.quality.containment.doubt.Readings.Sheets;
import wainbook.station.PaperMark;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/** Every value that was read at one vehicle, in the order of its record. Only what judged an item: no re-check is among them. */
record ReadingsOfVehicle(History history, Sheets sheets) {

    private static final String TORQUE = "N·m";

    List<Reading> all() {
        Optional<WorkOrder> order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return List.of();
        }
        String kind = order.get().ordered().vehicleKind();
        Set<UUID> voided = new HashSet<>();
        history.saying(Voided.class).forEach(entry -> voided.add(((Voided) entry.saying()).entry()));
        return history.saying(Result.class)
                .flatMap(entry -> of(PaperMark.asDone(history, entry), kind, voided.contains(entry.id())).stream())
                .toList();
    }

    private List<Reading> of(Entry entry, String kind, boolean voided) {
        if (entry.saying() instanceof Measured said) {
            boolean failed = said.verdict() == Verdict.FAIL;
            return List.of(reading(
                    entry,
                    kind,
                    said,
                    new Value(0, 0, said.unit(), said.reading(), said.works(), said.legal()),
                    failed,
                    voided));
        }
        if (entry.saying() instanceof Tabled said) {
            return cells(entry, said, kind, voided);
        }
        return entry.saying() instanceof Tightened said ? bolts(entry, said, kind, voided) : List.of();
    }

    private record Value(
            int place, int column, String unit, BigDecimal value, Optional<Limits> works, Optional<Limits> legal) {

        private List<Limits> limits() {
            return Stream.of(works, legal).flatMap(Optional::stream).toList();
        }

        Optional<BigDecimal> lower() {
            return limits().stream().flatMap(one -> one.lower().stream()).max(Comparator.naturalOrder());
        }

        Optional<BigDecimal> upper() {
            return limits().stream().flatMap(one -> one.upper().stream()).min(Comparator.naturalOrder());
        }

        boolean outside() {
            return limits().stream().anyMatch(one -> !one.admits(value));
        }
    }

    /** What a control unit is set to is no measurement: it is alike on every vehicle of a kind. */
    private List<Reading> cells(Entry entry, Tabled said, String kind, boolean voided) {
        List<Ask.Table.Column> columns =
                sheets.table(said.about()).map(Ask.Table::columns).orElse(List.of());
        var found = new ArrayList<Reading>();
        for (int i = 0; i < said.cells().size() && !columns.isEmpty(); i++) {
            Ask.Table.Column column = columns.get(i % columns.size());
            if (Setting.asked(column.title(), column.unit()).isPresent()) {
                continue;
            }
            Value value = new Value(
                    i + 1, i % columns.size() + 1, column.unit(), said.cells().get(i), column.works(), column.legal());
            found.add(reading(entry, kind, said, value, value.outside(), voided));
        }
        return found;
    }

    private static List<Reading> bolts(Entry entry, Tightened said, String kind, boolean voided) {
        var window = said.torque().limitsNm();
        var found = new ArrayList<Reading>();
        for (int bolt = 1; bolt <= said.boltsNm().size(); bolt++) {
            found.add(reading(
                    entry,
                    kind,
                    said,
                    new Value(
                            bolt,
                            0,
                            TORQUE,
                            said.boltsNm().get(bolt - 1),
                            Optional.of(Limits.between(window.lower(), window.upper())),
                            Optional.empty()),
                    said.boltsOutside().contains(bolt),
                    voided));
        }
        return found;
    }

    private static Reading reading(Entry entry, String kind, Result said, Value value, boolean failed, boolean voided) {
        Optional<Tightened> tightened = said instanceof Tightened one ? Optional.of(one) : Optional.empty();
        return new Reading(
                entry.id(),
                entry.number(),
                entry.subject().code(),
                kind,
                entry.moment().at(),
                entry.moment().deviceAt(),
                entry.moment().who(),
                entry.moment().station(),
                said.basis().used().map(Used::instrument),
                said.about().stage(),
                said.about().item(),
                value.column(),
                tightened.map(Tightened::joint),
                value.place(),
                value.unit(),
                value.value(),
                tightened.map(one -> one.torque().targetNm()),
                value.lower(),
                value.upper(),
                failed,
                voided);
    }
}
