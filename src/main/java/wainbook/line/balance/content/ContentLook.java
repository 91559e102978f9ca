package wainbook.line.balance.content;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.KindShare;
import wainbook.line.balance.content.Content.Place;
import wainbook.line.forecast.Forecasts;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.works.shift.WorksDay;

/** Reads the work content from the sheets that are in force, the shares from the vehicles in the works, recorded times from the forecast. */
@ApplicationScoped
public class ContentLook {

    private static final List<Phase> COUNTED = List.of(Phase.DONOR_ACCEPTED, Phase.ON_LINE, Phase.OFF_LINE);

    private final Releases releases;
    private final WorksDay day;
    private final Forecasts forecasts;

    ContentLook(Releases releases, WorksDay day, Forecasts forecasts) {
        this.releases = releases;
        this.day = day;
        this.forecasts = forecasts;
    }

    public Content now() {
        List<Route> routes = releases.routes();
        Set<String> passed = routes.stream()
                .flatMap(route -> route.legs().stream())
                .map(Route.Leg::stage)
                .collect(Collectors.toSet());
        List<Place> stages = releases.stages().stream()
                .filter(stage -> passed.contains(stage.code()))
                .map(this::place)
                .toList();
        return new Content(stages, shares(routes), items(routes, stages), day.taktMinutes());
    }

    /** What the forecast reads as well. */
    public Recorded recorded(Instant now) {
        return new Recorded(forecasts.line(now).past().finished());
    }

    private Place place(Stage stage) {
        int stations = Math.max(1, releases.stationsOf(stage.code()).size());
        return new Place(stage.code(), stage.number(), stage.title(), stations);
    }

    private static List<KindShare> shares(List<Route> routes) {
        Map<String, Long> counts = COUNTED.stream()
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .collect(Collectors.groupingBy(row -> row.vehicleKind, Collectors.counting()));
        boolean any = routes.stream().anyMatch(route -> counts.containsKey(route.vehicleKind()));
        return routes.stream()
                .map(Route::vehicleKind)
                .distinct()
                .map(kind -> new KindShare(kind, any ? counts.getOrDefault(kind, 0L) : 1))
                .filter(share -> share.vehicles() > 0)
                .toList();
    }

    private List<Item> items(List<Route> routes, List<Place> stages) {
        Map<String, CheckSheet> sheets = releases.sheets().stream()
                .collect(Collectors.toMap(CheckSheet::code, sheet -> sheet, (former, latter) -> latter));
        var items = new ArrayList<Item>();
        for (Place place : stages) {
            Map<String, List<OfKind>> here = new LinkedHashMap<>();
            routes.forEach(route -> route.leg(place.stage()).map(leg -> sheets.get(leg.checkSheet())).stream()
                    .flatMap(sheet -> sheet.items().stream())
                    .forEach(item -> here.computeIfAbsent(item.key(), key -> new ArrayList<>())
                            .add(new OfKind(route.vehicleKind(), item))));
            here.forEach((key, ofKinds) -> items.add(item(place.stage(), key, ofKinds)));
        }
        return once(items);
    }

    private record OfKind(String kind, CheckItem item) {}

    private static Item item(String stage, String key, List<OfKind> ofKinds) {
        var minutes = new HashMap<String, Double>();
        Set<String> after = new LinkedHashSet<>();
        ofKinds.forEach(one -> {
            minutes.put(one.kind(), (double) one.item().plannedMinutes());
            first(one.item()).map(before -> stage + "/" + before).forEach(after::add);
        });
        boolean bound = ofKinds.stream().anyMatch(one -> one.item().condition() != Condition.NONE);
        return new Item(
                stage + "/" + key, stage, key, ofKinds.get(0).item().title(), minutes, List.copyOf(after), bound);
    }

    private static Stream<String> first(CheckItem item) {
        return Stream.concat(
                item.after().stream(),
                item.dependsOn().stream()
                        .filter(dependence -> dependence.sort() == CheckItem.Dependence.Sort.ITEM)
                        .map(CheckItem.Dependence::code));
    }

    /** An item whose key stands at two stages stays, since a sheet cannot have a key twice. */
    private static List<Item> once(List<Item> items) {
        Map<String, Long> counts = items.stream().collect(Collectors.groupingBy(Item::key, Collectors.counting()));
        return items.stream()
                .map(item -> counts.get(item.key()) == 1
                        ? item
                        : new Item(
                                item.id(), item.stage(), item.key(), item.title(), item.minutes(), item.after(), true))
                .toList();
    }
}
