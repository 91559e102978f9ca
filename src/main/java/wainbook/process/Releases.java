package wainbook.process;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying.JointsReleased;
import wainbook.process.ProcessSaying.OutlineReleased;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.ProcessSaying.StageDefined;
import wainbook.process.ProcessSaying.StationDefined;
import wainbook.process.joint.Joint;
import wainbook.process.outline.Outline;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckSheet;

/** What the works has released: sheets, routes, joints, stages, stations, as they stand and as they stood. */
@ApplicationScoped
public class Releases {

    private record SheetRevision(String sheet, int revision) {}

    private final Ledger ledger;

    /** A released revision never changes. */
    private final Cache<SheetRevision, CheckSheet> sheets =
            Caffeine.newBuilder().maximumSize(500).build();

    Releases(Ledger ledger) {
        this.ledger = ledger;
    }

    /** A sheet in a revision that a vehicle is bound to. */
    public CheckSheet sheet(String code, int revision) {
        return known(code, revision)
                .orElseThrow(
                        () -> new IllegalArgumentException("check sheet " + code + " has no revision " + revision));
    }

    /** A sheet in a revision that was released. */
    public Optional<CheckSheet> known(String code, int revision) {
        return Optional.ofNullable(sheets.get(
                new SheetRevision(code, revision),
                key -> said(ledger.history(Subject.checkSheet(code)), Released.class)
                        .filter(released -> released.revision() == revision)
                        .findFirst()
                        .map(Released::sheet)
                        .orElse(null)));
    }

    /** Every check sheet that is in force, by code. */
    public List<CheckSheet> sheets() {
        return ledger.subjects(Subject.Sort.CHECK_SHEET).stream()
                .flatMap(subject -> sheetInForce(subject.code()).stream())
                .map(Released::sheet)
                .toList();
    }

    /** The revision of a sheet that is in force now. */
    public Optional<Released> sheetInForce(String code) {
        return ledger.history(Subject.checkSheet(code)).last(Released.class);
    }

    public Optional<Route> route(String code) {
        return works(RouteReleased.class)
                .map(RouteReleased::route)
                .filter(route -> route.code().equals(code))
                .reduce((former, latter) -> latter);
    }

    /**
     * What a vehicle on this route does at a stage. Where the route passes the stage no longer, what it did when it passed
     * it last: an order keeps the stages that it was ordered with.
     */
    public Optional<Route.Leg> leg(String route, String stage) {
        return works(RouteReleased.class)
                .map(RouteReleased::route)
                .filter(one -> one.code().equals(route))
                .flatMap(one -> one.leg(stage).stream())
                .reduce((former, latter) -> latter);
    }

    /** Each route as it was released last. */
    public List<Route> routes() {
        return newest(works(RouteReleased.class).map(RouteReleased::route), Route::code);
    }

    /** Where a vehicle with its packs aboard would stand on a route, by the sheets in force. */
    public Optional<Route.Step> bare(Route route) {
        return route.bare(sheet -> sheetInForce(sheet).map(Released::sheet));
    }

    public List<Joint> joints() {
        return works(JointsReleased.class)
                .reduce((former, latter) -> latter)
                .map(JointsReleased::joints)
                .orElse(List.of());
    }

    /** The joints as they stood then; none if there were none yet. */
    public List<Joint> jointsAt(Instant at) {
        return ledger.history(Subject.works())
                .saying(JointsReleased.class)
                .filter(entry -> !entry.moment().at().isAfter(at))
                .reduce((former, latter) -> latter)
                .map(entry -> ((JointsReleased) entry.saying()).joints())
                .orElse(List.of());
    }

    public Optional<Joint> joint(String code) {
        return joints().stream().filter(joint -> joint.code().equals(code)).findFirst();
    }

    /** The drawing of a kind of vehicle that is in force; the works may have none. */
    public Optional<Outline> outline(String vehicleKind) {
        return works(OutlineReleased.class)
                .map(OutlineReleased::outline)
                .filter(outline -> outline.vehicleKind().equals(vehicleKind))
                .reduce((former, latter) -> latter);
    }

    /** The isolation plan of a variant that is in force. */
    public Optional<Plan> plan(String variant) {
        return works(PlanReleased.class)
                .map(PlanReleased::plan)
                .filter(plan -> plan.variant().equals(variant))
                .reduce((former, latter) -> latter);
    }

    /** The isolation plan of a variant that was in force then. */
    public Optional<Plan> planAt(String variant, Instant at) {
        return said(ledger.history(Subject.works()).upTo(at), PlanReleased.class)
                .map(PlanReleased::plan)
                .filter(plan -> plan.variant().equals(variant))
                .reduce((former, latter) -> latter);
    }

    /** The isolation plans in force, one a variant. */
    public List<Plan> plans() {
        return newest(works(PlanReleased.class).map(PlanReleased::plan), Plan::variant);
    }

    /** Each as it was defined last, by their number. */
    public List<Stage> stages() {
        return newest(works(StageDefined.class).map(StageDefined::stage), Stage::code).stream()
                .sorted(Comparator.comparingInt(Stage::number))
                .toList();
    }

    public Optional<Stage> stage(String code) {
        return stages().stream().filter(stage -> stage.code().equals(code)).findFirst();
    }

    public List<Station> stations() {
        return newest(works(StationDefined.class).map(StationDefined::station), Station::code);
    }

    public Optional<Station> station(String code) {
        return stations().stream()
                .filter(station -> station.code().equals(code))
                .findFirst();
    }

    public List<Station> stationsOf(String stage) {
        return stations().stream()
                .filter(station -> station.stage().equals(Optional.of(stage)))
                .toList();
    }

    /** In the order in which each was said first. */
    private static <T> List<T> newest(Stream<T> all, Function<T, String> code) {
        var newest = new LinkedHashMap<String, T>();
        all.forEach(one -> newest.put(code.apply(one), one));
        return List.copyOf(newest.values());
    }

    private <S extends ProcessSaying> Stream<S> works(Class<S> kind) {
        return said(ledger.history(Subject.works()), kind);
    }

    private static <S extends ProcessSaying> Stream<S> said(History history, Class<S> kind) {
        return history.saying(kind).map(entry -> kind.cast(entry.saying()));
    }
}
