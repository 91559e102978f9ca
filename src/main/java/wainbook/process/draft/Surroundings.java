package wainbook.process.draft;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.draft.InWorks.Vehicle;
import wainbook.process.plan.Plan;
import wainbook.process.rule.Known;
import wainbook.process.sheet.CheckSheet;
import wainbook.works.instruments.Instrument;

/** What stands in force round a draft: what it may refer to, what refers to it, the vehicles that rest on it, and the tools. */
public record Surroundings(
        Known known,
        List<CheckSheet> sheets,
        List<Stage> stages,
        List<Station> stations,
        List<Route> routes,
        List<Plan> plans,
        List<Vehicle> vehicles,
        Tools tools) {

    /** The instruments of a kind that may be used today: neither expired nor withdrawn. */
    public interface Tools {
        List<Instrument> fit(String kind);
    }

    public Surroundings {
        sheets = List.copyOf(sheets);
        stages = List.copyOf(stages);
        stations = List.copyOf(stations);
        routes = List.copyOf(routes);
        plans = List.copyOf(plans);
        vehicles = List.copyOf(vehicles);
    }

    public Optional<Stage> stage(String code) {
        return stages.stream().filter(stage -> stage.code().equals(code)).findFirst();
    }

    boolean kindOfInstrument(String kind) {
        return known.instrumentKinds().contains(kind);
    }

    Optional<CheckSheet> sheet(String code) {
        return sheets.stream().filter(sheet -> sheet.code().equals(code)).findFirst();
    }

    public Optional<Plan> plan(String variant) {
        return plans.stream().filter(plan -> plan.variant().equals(variant)).findFirst();
    }

    public List<Vehicle> vehiclesOf(String variant) {
        return vehicles.stream()
                .filter(vehicle -> vehicle.variant().equals(variant))
                .toList();
    }

    /**
     * All that a variant is or may be worked by: what its vehicles are bound to, and the sheets on their routes. A route for
     * a kind of vehicle that is called as the variant counts also before the first order.
     */
    Set<CheckSheet> workedBy(String variant) {
        Stream<CheckSheet> bound = vehiclesOf(variant).stream().flatMap(vehicle -> vehicle.sheets().stream());
        Stream<CheckSheet> ahead = routes.stream()
                .filter(route -> route.vehicleKind().equals(variant)
                        || vehiclesOf(variant).stream()
                                .anyMatch(vehicle -> vehicle.route().equals(route.code())))
                .flatMap(route -> route.legs().stream())
                .flatMap(leg -> sheet(leg.checkSheet()).stream());
        return Stream.concat(bound, ahead).collect(Collectors.toSet());
    }
}
