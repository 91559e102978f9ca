package wainbook.handover.issue;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import wainbook.gate.Gate;
import wainbook.handover.HandoverLook;
import wainbook.handover.carbon.CarbonStating;
import wainbook.handover.carbon.EnginesFate;
import wainbook.handover.record.RecordRules;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.road.RoadUse;
import wainbook.order.FactQuestion;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.WorkOrder;
import wainbook.page.Formats;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.VehicleFacts;
import wainbook.process.VehicleKinds;
import wainbook.process.plan.Plan;
import wainbook.station.ItemState;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.work.Workplace;
import wainbook.works.WorksSaying.Named;
import wainbook.works.shift.WorksDay;

/**
 * What is on record of a vehicle, by the names that texts call it. People are numbers here as on the record; what is not known
 * is empty, and never left out.
 */
@ApplicationScoped
public class Figures {

    private static final String VOLT = " V";

    private final Ledger ledger;
    private final Workplace workplace;
    private final Releases releases;
    private final VehicleKinds kinds;
    private final HandoverLook handover;
    private final WorksDay day;
    private final EnginesFate engine;

    Figures(
            Ledger ledger,
            Workplace workplace,
            Releases releases,
            VehicleKinds kinds,
            HandoverLook handover,
            WorksDay day,
            EnginesFate engine) {
        this.engine = engine;
        this.ledger = ledger;
        this.workplace = workplace;
        this.releases = releases;
        this.kinds = kinds;
        this.handover = handover;
        this.day = day;
    }

    public Map<String, Object> of(History history, WorkOrder order, Instant now) {
        var items = new ArrayList<StageItem>();
        List<String> stages = order.gates();
        for (String stage : stages) {
            boolean last = stage.equals(stages.get(stages.size() - 1));
            String title = releases.stage(stage).map(Stage::title).orElse(stage);
            workplace.record(history, order, stage).stream()
                    .flatMap(record -> record.items().stream())
                    .forEach(item -> items.add(new StageItem(title, last, item)));
        }
        var format = new Formats(day.zone());
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put(
                "works",
                ledger.history(Subject.works())
                        .last(Named.class)
                        .map(Named::title)
                        .orElse(""));
        figures.put("day", Formats.date(day.of(now)));
        figures.put("order", order(order));
        figures.put("facts", facts(order));
        figures.put("received", Readings.received(items));
        figures.put("weights", Readings.weights(items, format));
        figures.put("total", Readings.totalKg(items));
        figures.put("measurements", Readings.highVoltage(items, format));
        figures.put("packs", Fitted.packs(history));
        figures.put("parts", Fitted.all(history));
        figures.put("software", Fitted.software(items));
        figures.put("joints", Readings.joints(items, releases));
        figures.put("gates", gates(history, order, format));
        figures.put("drives", drives(history, format));
        figures.put("checks", checks(history));
        figures.put("isolation", isolation(order));
        RecordRules record = RecordRules.of(history, order, handover.documents(history, order, now));
        figures.put("handover", HandoverFigures.of(record, format));
        figures.put("record", HandoverFigures.complete(record));
        figures.put("carbon", CarbonFigures.of(CarbonStating.last(history), engine.inWords(history, order)));
        return figures;
    }

    /**
     * An item with the title of its stage.
     *
     * @param built whether it belongs to the last stage, when the vehicle is as it leaves
     */
    record StageItem(String stage, boolean built, ItemState item) {
        Optional<Entry> passing() {
            return item.passing();
        }
    }

    private Map<String, Object> order(WorkOrder order) {
        Optional<DonorReceived> donor = order.donor();
        return Map.of(
                "number", order.number(),
                "operator", order.ordered().operator(),
                "kind", kinds.title(order.ordered().vehicleKind()),
                "vin", donor.map(DonorReceived::vin).orElse(""),
                "registration", donor.map(DonorReceived::registration).orElse(""),
                "odometerKm",
                        donor.map(DonorReceived::odometerKm)
                                .map(String::valueOf)
                                .orElse(""));
    }

    /** By their short names: their own words, and empty for those nobody stated. */
    private static Map<String, Object> facts(WorkOrder order) {
        Map<String, Object> facts = new TreeMap<>();
        VehicleFacts.VOCABULARY.names().forEach(name -> facts.put(name, ""));
        order.facts().forEach((name, stated) -> facts.put(name, FactQuestion.word(stated)));
        return facts;
    }

    private List<Map<String, Object>> gates(History history, WorkOrder order, Formats format) {
        return handover.gates(history, order).stream()
                .filter(gate -> gate.gate().flatMap(Gate::signed).isPresent())
                .map(gate -> {
                    Entry signed = gate.gate().flatMap(Gate::signed).orElseThrow();
                    return Map.<String, Object>of(
                            "stage", gate.title(),
                            "by", signed.moment().who(),
                            "at", format.moment(signed.moment().at()));
                })
                .toList();
    }

    private static List<Map<String, Object>> drives(History history, Formats format) {
        return RoadUse.of(history).drives().stream()
                .map(drive -> Map.<String, Object>of(
                        "at", format.moment(drive.at()),
                        "route", drive.said().route(),
                        "km", drive.said().km(),
                        "loadKg", drive.said().loadKg(),
                        "found", drive.said().defects()))
                .toList();
    }

    private static List<Map<String, Object>> checks(History history) {
        return history.saying(HandedOn.class)
                .map(entry -> (HandedOn) entry.saying())
                .map(said -> Map.<String, Object>of("joint", said.joint(), "byKm", said.byKm()))
                .toList();
    }

    private Map<String, Object> isolation(WorkOrder order) {
        Optional<Plan> plan = releases.plan(order.ordered().variant());
        List<Map<String, Object>> sources = plan.stream()
                .flatMap(known -> Stream.concat(known.sources().stream(), known.later().stream()))
                .map(source -> Map.<String, Object>of(
                        "name", source.name(),
                        "how", source.howOpened(),
                        "lock", source.lockedAt(),
                        "shown", source.howShown()))
                .toList();
        List<String> points = plan.stream()
                .flatMap(known -> known.points().stream())
                .map(point -> point.where())
                .toList();
        return Map.of(
                "sources",
                sources,
                "points",
                points,
                "waitMinutes",
                plan.map(known -> String.valueOf(known.waitMinutes())).orElse(""),
                "maximum",
                plan.map(known -> known.maximumVolt().toPlainString() + VOLT).orElse(""));
    }
}
