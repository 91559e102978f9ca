package wainbook.setup.files;

import java.util.List;
import wainbook.predicate.Predicates;
import wainbook.process.Draft;
import wainbook.process.Joint;
import wainbook.process.Known;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;

/** What must hold between stages, stations, joints, sheets and routes: the rules of a release among them. */
record ProcessChecks(
        List<Located<Stage>> stages,
        List<Located<Station>> stations,
        List<Located<Joint>> joints,
        List<SheetFile> sheets,
        List<Located<Route>> routes,
        Codes kinds,
        Predicates predicates,
        List<Fault> faults) {

    void run() {
        Codes stageCodes = Codes.of(stages, Stage::code, "stages.csv", faults, "stage");
        Codes.of(stations, Station::code, "stations.csv", faults, "station");
        Codes jointCodes = Codes.of(joints, Joint::code, "joints.csv", faults, "joint");
        Codes.of(routes, Route::code, "routes.yaml", faults, "route");
        Codes sheetCodes = Codes.of(
                sheets.stream()
                        .map(file -> new Located<>(file.sheet(), file.place()))
                        .toList(),
                sheet -> sheet.code(),
                "sheets/",
                faults,
                "check sheet");
        for (Located<Station> station : stations) {
            station.value()
                    .stage()
                    .ifPresent(
                            stage -> stageCodes.require(stage, station.place().field("stage")));
        }
        for (Located<Route> route : routes) {
            sheetCodes.require(route.value().intakeSheet(), route.place().field("intake_sheet"));
            for (Route.Leg leg : route.value().legs()) {
                stageCodes.require(leg.stage(), route.place().field("stage"));
                sheetCodes.require(leg.checkSheet(), route.place().field("check_sheet"));
            }
        }
        checkSheets(stageCodes, jointCodes);
    }

    private void checkSheets(Codes stageCodes, Codes jointCodes) {
        for (Located<Joint> joint : joints) {
            kinds.require(joint.value().toolKind(), joint.place().field("tool_kind"));
        }
        if (!stageCodes.complete() || !jointCodes.complete() || !kinds.complete()) {
            return;
        }
        var known = new Known(Located.values(joints), stageCodes.all(), kinds.all(), predicates);
        for (SheetFile file : sheets) {
            new Draft(file.sheet())
                    .check(known)
                    .forEach(reason -> faults.add(new Fault(
                            file.items().getOrDefault(reason.arguments().get(0), file.place()), reason)));
        }
    }
}
