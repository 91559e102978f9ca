package wainbook.setup.files;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.predicate.Predicates;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.joint.Joint;
import wainbook.process.rule.Draft;
import wainbook.process.rule.Known;
import wainbook.process.sheet.CheckItem;

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

    private static final Map<String, String> FIELDS = Map.of(
            "process.streamUnknown", "/asks/stream/code",
            "process.streamNoMass", "/asks/stream",
            "process.unknownJoint", "/asks/joint",
            "process.classAByTick", "/asks/joint",
            "process.classBByTick", "/asks/joint",
            "process.highVoltageCondition", "/condition",
            "process.conditionFault", "/applies_when",
            "process.unknownInstrumentKind", "/asks/instrument_kind",
            "process.patternFault", "/asks/pattern",
            "process.worksLimitLaxer", "/asks/works");

    void run() {
        Codes stageCodes = Codes.of(stages, Stage::code, "code", "stages.csv", faults, "stage");
        Codes.of(stations, Station::code, "code", "stations.csv", faults, "station");
        Codes jointCodes = Codes.of(joints, Joint::code, "code", "joints.csv", faults, "joint");
        Codes.of(routes, Route::code, "/code", "routes.yaml", faults, "route");
        Codes sheetCodes = Codes.of(
                sheets.stream()
                        .map(file -> new Located<>(file.sheet(), file.place()))
                        .toList(),
                sheet -> sheet.code(),
                "code",
                "sheets/",
                faults,
                "check sheet");
        for (Located<Station> station : stations) {
            station.value().stage().ifPresent(stage -> stageCodes.require(stage, station.at("stage")));
        }
        for (Located<Route> route : routes) {
            sheetCodes.require(route.value().intakeSheet(), route.at("/intake_sheet"));
            for (int i = 0; i < route.value().legs().size(); i++) {
                Route.Leg leg = route.value().legs().get(i);
                stageCodes.require(leg.stage(), route.at("/legs/" + i + "/stage"));
                sheetCodes.require(leg.checkSheet(), route.at("/legs/" + i + "/check_sheet"));
            }
        }
        checkSheets(stageCodes, jointCodes);
    }

    private void checkSheets(Codes stageCodes, Codes jointCodes) {
        for (Located<Joint> joint : joints) {
            kinds.require(joint.value().toolKind(), joint.at("tool_kind"));
        }
        if (!stageCodes.complete() || !jointCodes.complete() || !kinds.complete()) {
            return;
        }
        var known = new Known(Located.values(joints), stageCodes.all(), kinds.all(), predicates);
        for (SheetFile file : sheets) {
            new Draft(file.sheet()).check(known).forEach(reason -> faults.add(new Fault(place(file, reason), reason)));
        }
    }

    /** The field that a rule is about, or the item. */
    private static Place place(SheetFile file, Reason reason) {
        Located<CheckItem> item = file.items().get(reason.arguments().get(0));
        if (item == null) {
            return file.place();
        }
        return Optional.ofNullable(FIELDS.get(reason.key())).map(item::at).orElse(item.place());
    }
}
