package wainbook.trace;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Everything that a vehicle's record names, sort by sort: the way back from the vehicle. */
public record VehicleNames(
        String order,
        Optional<String> vin,
        Optional<String> registration,
        String operator,
        String phase,
        Trace.Dates dates,
        List<Group> groups) {

    public VehicleNames {
        groups = List.copyOf(groups);
    }

    /** All of one sort. */
    public record Group(Mention.Sort sort, List<Thing> things) {
        public Group {
            things = List.copyOf(things);
        }

        public String title() {
            return sort.words();
        }

        public String anchor() {
            return sort.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public boolean people() {
            return sort == Mention.Sort.PERSON;
        }
    }

    /**
     * One thing.
     *
     * @param places entries that name it
     */
    public record Thing(String shown, long places, Instant first, Instant last) {

        public String path() {
            return "/trace?q=" + URLEncoder.encode(shown, StandardCharsets.UTF_8);
        }

        public boolean once() {
            return places == 1;
        }
    }

    /** Joints with the revision that each entry was made by. */
    static List<TracedRow.Thing> joints(List<TracedRow> rows, JointRevisions revisions) {
        Map<String, List<TracedRow>> by = new TreeMap<>();
        rows.forEach(row -> revisions
                .of(row)
                .forEach(mention -> by.computeIfAbsent(mention.shown(), key -> new ArrayList<>())
                        .add(row)));
        return by.entrySet().stream()
                .map(one -> new TracedRow.Thing(
                        Mention.Sort.JOINT_REVISION,
                        one.getKey(),
                        one.getValue().stream().map(TracedRow::entry).distinct().count(),
                        one.getValue().stream()
                                .map(row -> row.at)
                                .min(Instant::compareTo)
                                .orElseThrow(),
                        one.getValue().stream()
                                .map(row -> row.at)
                                .max(Instant::compareTo)
                                .orElseThrow()))
                .toList();
    }

    static List<Group> grouped(List<TracedRow.Thing> named) {
        return Arrays.stream(Mention.Sort.values())
                .map(sort -> new Group(
                        sort,
                        named.stream()
                                .filter(thing -> thing.sort() == sort)
                                .map(thing -> new Thing(thing.shown(), thing.places(), thing.first(), thing.last()))
                                .toList()))
                .filter(group -> !group.things().isEmpty())
                .toList();
    }

    public int things() {
        return groups.stream().mapToInt(group -> group.things().size()).sum();
    }

    public String path() {
        return "/trace/vehicle/" + order;
    }

    /** People by their number, since a file leaves the works. */
    List<List<String>> lines() {
        var lines = new ArrayList<List<String>>();
        for (Group group : groups) {
            for (Thing thing : group.things()) {
                lines.add(List.of(
                        order,
                        group.sort().word(),
                        thing.shown(),
                        String.valueOf(thing.places()),
                        thing.first().toString(),
                        thing.last().toString()));
            }
        }
        return lines;
    }
}
