package wainbook.setup.files;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.process.Route;
import wainbook.process.outline.Outline;
import wainbook.process.sheet.CheckItem;

/** What must hold between outlines, routes and sheets: where a kind is drawn, every zone that its work names is drawn. */
record OutlineChecks(
        List<Located<Outline>> outlines, List<Located<Route>> routes, List<SheetFile> sheets, List<Fault> faults) {

    void run() {
        Codes kinds = Codes.of(
                outlines, Outline::vehicleKind, "/vehicle_kind", Part.OUTLINES.file() + "/", faults, "outline");
        if (!kinds.complete() || routes.isEmpty()) {
            return;
        }
        Set<String> built =
                routes.stream().map(route -> route.value().vehicleKind()).collect(Collectors.toSet());
        Set<Place> told = new HashSet<>();
        for (Located<Outline> outline : outlines) {
            String kind = outline.value().vehicleKind();
            if (!built.contains(kind)) {
                faults.add(Fault.of(
                        outline.at("/vehicle_kind"),
                        "unknownCode",
                        kind,
                        "a kind of vehicle that a route builds: " + inWords(built.stream())));
            }
            worked(kind)
                    .flatMap(sheet -> sheet.items().values().stream())
                    .forEach(item -> zone(item, outline.value(), told));
        }
    }

    /** The sheets that vehicles of the kind are worked by. */
    private Stream<SheetFile> worked(String kind) {
        Set<String> codes = routes.stream()
                .map(Located::value)
                .filter(route -> route.vehicleKind().equals(kind))
                .flatMap(route -> Stream.concat(
                        Stream.of(route.intakeSheet()), route.legs().stream().map(Route.Leg::checkSheet)))
                .collect(Collectors.toSet());
        return sheets.stream().filter(file -> codes.contains(file.sheet().code()));
    }

    private void zone(Located<CheckItem> item, Outline outline, Set<Place> told) {
        item.value()
                .zone()
                .filter(zone -> outline.zone(zone).isEmpty())
                .filter(zone -> told.add(item.at("/zone")))
                .ifPresent(zone -> faults.add(Fault.of(
                        item.at("/zone"),
                        "unknownCode",
                        zone,
                        "a zone of the outline of " + outline.vehicleKind() + ": "
                                + inWords(outline.zones().stream().map(Outline.Zone::name)))));
    }

    private static String inWords(Stream<String> words) {
        return words.sorted().collect(Collectors.joining(", "));
    }
}
