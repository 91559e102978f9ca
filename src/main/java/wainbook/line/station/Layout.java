package wainbook.line.station;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;

/**
 * The stations of the line and how vehicles come from one to another, by the routes in force. Stations are counted from 0, from the start
 * of the line to its end.
 *
 * @param stages by their codes, those that a route passes
 * @param before for each station those that vehicles come to it from
 */
public record Layout(List<Station> stations, Map<String, Stage> stages, List<List<Integer>> before) {

    public Layout {
        stations = List.copyOf(stations);
        before = before.stream().map(List::copyOf).toList();
    }

    public static Layout of(Releases releases) {
        List<Route> routes = releases.routes();
        Map<String, Stage> stages = new LinkedHashMap<>();
        releases.stages().stream()
                .filter(stage -> routes.stream()
                        .anyMatch(route -> route.leg(stage.code()).isPresent()))
                .forEach(stage -> stages.put(stage.code(), stage));
        List<Station> stations = releases.stations().stream()
                .filter(station -> station.stage().filter(stages::containsKey).isPresent())
                .sorted(Comparator.comparing((Station station) ->
                                stages.get(station.stage().orElseThrow()).number())
                        .thenComparing(Station::code))
                .toList();
        Map<String, List<Integer>> ofStage = new HashMap<>();
        stages.keySet().forEach(stage -> ofStage.put(stage, indices(stations, stage)));
        List<List<Integer>> before = stations.stream()
                .map(station -> routes.stream()
                        .flatMap(route -> before(route, station.stage().orElseThrow()))
                        .distinct()
                        .flatMap(stage -> ofStage.getOrDefault(stage, List.of()).stream())
                        .toList())
                .toList();
        return new Layout(stations, stages, before);
    }

    private static Stream<String> before(Route route, String stage) {
        List<String> stages = route.legs().stream().map(Route.Leg::stage).toList();
        int index = stages.indexOf(stage);
        return index > 0 ? Stream.of(stages.get(index - 1)) : Stream.empty();
    }

    private static List<Integer> indices(List<Station> stations, String stage) {
        return Stream.iterate(0, at -> at < stations.size(), at -> at + 1)
                .filter(at -> stations.get(at).stage().orElseThrow().equals(stage))
                .toList();
    }

    public List<Integer> of(String stage) {
        return indices(stations, stage);
    }

    /** −1 for a place that is no station of the line. */
    public int index(String code) {
        for (int at = 0; at < stations.size(); at++) {
            if (stations.get(at).code().equals(code)) {
                return at;
            }
        }
        return -1;
    }

    public String code(int station) {
        return stations.get(station).code();
    }

    public Stage stage(int station) {
        return stages.get(stations.get(station).stage().orElseThrow());
    }
}
