package wainbook.process.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.process.ProcessSaying;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;

/** The works' stages and stations as a draft. None is ever taken away, since vehicles on record stood there. */
public record StagesDraft(List<Stage> stages, List<Station> stations) implements Drafted {

    public StagesDraft {
        stages = stages.stream()
                .sorted(Comparator.comparingInt(Stage::number).thenComparing(Stage::code))
                .toList();
        stations = stations.stream().sorted(Comparator.comparing(Station::code)).toList();
    }

    static StagesDraft empty() {
        return new StagesDraft(List.of(), List.of());
    }

    StagesDraft with(Stage stage) {
        var next = new ArrayList<>(stages);
        next.removeIf(one -> one.code().equals(stage.code()));
        next.add(stage);
        return new StagesDraft(next, stations);
    }

    StagesDraft with(Station station) {
        var next = new ArrayList<>(stations);
        next.removeIf(one -> one.code().equals(station.code()));
        next.add(station);
        return new StagesDraft(stages, next);
    }

    @Override
    public About about() {
        return About.STAGES;
    }

    @Override
    public String title() {
        return Words.of("process.stagesTitle");
    }

    @Override
    public List<Reason> faults(Surroundings surroundings) {
        var faults = new ArrayList<Reason>();
        Map<Integer, String> numbers = new HashMap<>();
        var codes = new HashSet<String>();
        for (Stage stage : stages) {
            codes.add(stage.code());
            String other = numbers.put(stage.number(), stage.code());
            if (other != null) {
                faults.add(
                        Reason.of("process.stageNumberTwice", Reason.WORKS_RULE, stage.code(), other, stage.number()));
            }
        }
        for (Station station : stations) {
            station.stage()
                    .filter(stage -> !codes.contains(stage))
                    .ifPresent(stage -> faults.add(
                            Reason.of("process.stationOfNoStage", Reason.WORKS_RULE, station.code(), stage)));
        }
        surroundings.stages().stream()
                .map(Stage::code)
                .filter(stage -> !codes.contains(stage))
                .sorted()
                .forEach(stage -> faults.add(Reason.of("process.stageTakenAway", Reason.WORKS_RULE, stage)));
        Set<String> places = stations.stream().map(Station::code).collect(Collectors.toSet());
        surroundings.stations().stream()
                .map(Station::code)
                .filter(station -> !places.contains(station))
                .sorted()
                .forEach(station -> faults.add(Reason.of("process.stationTakenAway", Reason.WORKS_RULE, station)));
        vehicles(surroundings, faults);
        return List.copyOf(faults);
    }

    /** What would leave a vehicle at the wrong stage, or without a way on. */
    private void vehicles(Surroundings surroundings, List<Reason> faults) {
        for (Station station : stations) {
            boolean elsewhere = surroundings.stations().stream()
                    .anyMatch(now ->
                            now.code().equals(station.code()) && !now.stage().equals(station.stage()));
            surroundings.vehicles().stream()
                    .filter(vehicle -> elsewhere && vehicle.place().equals(Optional.of(station.code())))
                    .findFirst()
                    .ifPresent(vehicle -> faults.add(
                            Reason.of("process.stationTaken", Reason.WORKS_RULE, station.code(), vehicle.order())
                                    .liftedAt("/orders/" + vehicle.order())));
        }
        for (Route route : surroundings.routes()) {
            route.legs().stream()
                    .map(leg -> Optional.of(leg.stage()))
                    .filter(stage -> at(surroundings.stations(), stage) && !at(stations, stage))
                    .forEach(stage -> faults.add(
                            Reason.of("process.stageLosesStations", Reason.WORKS_RULE, stage.get(), route.code())));
        }
        if (at(surroundings.stations(), Optional.empty()) && !at(stations, Optional.empty())) {
            faults.add(Reason.of("process.noPlaceOffTheLine", Reason.WORKS_RULE, About.WHOLE_WORKS));
        }
    }

    private static boolean at(List<Station> stations, Optional<String> stage) {
        return stations.stream().anyMatch(station -> station.stage().equals(stage));
    }

    /** Only what is new or defined anew. */
    @Override
    public List<ProcessSaying> sayings(Revisions former) {
        Optional<StagesDraft> before = former.inForce().map(version -> (StagesDraft) version.what());
        Set<Stage> knownStages = before.map(known -> Set.copyOf(known.stages)).orElse(Set.of());
        Set<Station> knownStations =
                before.map(known -> Set.copyOf(known.stations)).orElse(Set.of());
        var sayings = new ArrayList<ProcessSaying>();
        stages.stream()
                .filter(stage -> !knownStages.contains(stage))
                .forEach(stage -> sayings.add(new ProcessSaying.StageDefined(stage)));
        stations.stream()
                .filter(station -> !knownStations.contains(station))
                .forEach(station -> sayings.add(new ProcessSaying.StationDefined(station)));
        return sayings;
    }

    @Override
    public List<Part> parts() {
        var parts = new ArrayList<Part>();
        stages.forEach(stage -> parts.add(Part.of(Part.Group.STAGE, stage.code(), stage.title())
                .say("number", stage.number())
                .say("title", stage.title())
                .say(
                        "stationsHere",
                        stations.stream()
                                .filter(station -> station.stage().equals(Optional.of(stage.code())))
                                .map(Station::code)
                                .collect(Collectors.joining(", ")))
                .part()));
        stations.forEach(station -> parts.add(Part.of(Part.Group.STATION, station.code(), station.title())
                .say("title", station.title())
                .say("stage", station.stage())
                .part()));
        return parts;
    }
}
