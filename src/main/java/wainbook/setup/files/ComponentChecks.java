package wainbook.setup.files;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.process.Route;
import wainbook.process.component.Component;

/** What must hold for the library of parts: codes of their own, kinds that are built, packs of a type alike. */
record ComponentChecks(List<Located<Component>> components, List<Located<Route>> routes, List<Fault> faults) {

    void run() {
        Codes.of(components, Component::code, "code", Part.COMPONENTS.file(), faults, "part");
        Set<String> built =
                routes.stream().map(route -> route.value().vehicleKind()).collect(Collectors.toSet());
        Map<String, Component> packs = new HashMap<>();
        for (Located<Component> one : components) {
            String kind = one.value().vehicleKind();
            if (!routes.isEmpty() && !built.contains(kind)) {
                faults.add(Fault.of(
                        one.at("vehicle_kind"),
                        "unknownCode",
                        kind,
                        "a kind of vehicle that a route builds: "
                                + built.stream().sorted().collect(Collectors.joining(", "))));
            }
            one.value().packType().ifPresent(type -> alike(one, packs.putIfAbsent(kind + " " + type, one.value())));
        }
    }

    /** The table of packs reckons with one mass and one energy for each type. */
    private void alike(Located<Component> one, Component first) {
        if (first == null) {
            return;
        }
        if (first.massKg().compareTo(one.value().massKg()) != 0) {
            faults.add(Fault.of(
                    one.at("mass_kg"),
                    "wrongValue",
                    one.value().massKg().toPlainString(),
                    first.massKg().toPlainString() + ", as the pack " + first.code() + " of the same type"));
        }
        if (first.nominalKwh().orElseThrow().compareTo(one.value().nominalKwh().orElseThrow()) != 0) {
            faults.add(Fault.of(
                    one.at("nominal_kwh"),
                    "wrongValue",
                    one.value().nominalKwh().orElseThrow().toPlainString(),
                    first.nominalKwh().orElseThrow().toPlainString() + ", as the pack " + first.code()
                            + " of the same type"));
        }
    }
}
