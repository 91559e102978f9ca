package wainbook.rehearsal.scenario;

import java.util.ArrayList;
import java.util.List;
import wainbook.process.Releases;
import wainbook.process.Route;

/** A route as a line of steps, each one slot long: a vehicle stays so many slots at a stage as the stage has stations. */
public record Line(List<Leg> legs) {

    /** @param step the first one at this stage */
    public record Leg(String stage, int step, List<String> stations) {

        /** Vehicles take the stations of a stage in turn. */
        public String station(int entry) {
            return stations.get(Math.floorMod(entry, stations.size()));
        }
    }

    public Line {
        legs = List.copyOf(legs);
    }

    public static Line of(Route route, Releases releases) {
        var legs = new ArrayList<Leg>();
        int step = 0;
        for (Route.Leg leg : route.legs()) {
            List<String> stations = releases.stationsOf(leg.stage()).stream()
                    .map(station -> station.code())
                    .toList();
            legs.add(new Leg(leg.stage(), step, stations));
            step += stations.size();
        }
        return new Line(legs);
    }

    public int steps() {
        return legs.stream().mapToInt(leg -> leg.stations().size()).sum();
    }
}
