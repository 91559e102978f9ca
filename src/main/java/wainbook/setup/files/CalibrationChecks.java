package wainbook.setup.files;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.process.Route;
import wainbook.process.calibration.Calibration;

/** What must hold for the calibrations: a revision once, and kinds of vehicle that are built. */
record CalibrationChecks(List<Located<Calibration>> calibrations, List<Located<Route>> routes, List<Fault> faults) {

    void run() {
        Codes.of(calibrations, Calibration::name, "code", Part.CALIBRATIONS.file(), faults, "calibration");
        Set<String> built =
                routes.stream().map(route -> route.value().vehicleKind()).collect(Collectors.toSet());
        for (Located<Calibration> one : calibrations) {
            String kind = one.value().vehicleKind();
            if (!routes.isEmpty() && !built.contains(kind)) {
                faults.add(Fault.of(
                        one.at("vehicle_kind"),
                        "unknownCode",
                        kind,
                        "a kind of vehicle that a route builds: "
                                + built.stream().sorted().collect(Collectors.joining(", "))));
            }
        }
    }
}
