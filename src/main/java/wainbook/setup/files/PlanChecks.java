package wainbook.setup.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wainbook.process.plan.Point.Pair;

/** What must hold within an isolation plan before the room of isolation looks at it. */
record PlanChecks(Located<Lines.IsolationPlan> plan, List<Fault> faults) {

    void run() {
        int before = faults.size();
        List<Located<Lines.Source>> sources = new ArrayList<>();
        for (int i = 0; i < plan.value().sources().size(); i++) {
            sources.add(new Located<>(plan.value().sources().get(i), plan.at("/sources/" + i + "/code")));
        }
        for (int i = 0; i < plan.value().later().size(); i++) {
            sources.add(new Located<>(plan.value().later().get(i), plan.at("/later/" + i + "/code")));
        }
        Codes known = Codes.of(sources, Lines.Source::code, "code", plan.place().file(), faults, "source");
        for (int i = 0; i < plan.value().points().size(); i++) {
            known.require(plan.value().points().get(i).source(), plan.at("/points/" + i + "/source"));
            pairs(plan.value().points().get(i).pairs(), "/points/" + i + "/pairs");
        }
        var proved = plan.value().points().stream().map(Lines.Point::source).toList();
        known.all().stream()
                .filter(code -> !proved.contains(code))
                .sorted()
                .forEach(code -> faults.add(Fault.of(plan.at("/points"), "sourceUnproved", code, "a point")));
        if (faults.size() == before) {
            plan.turned(PlanFile::plan, faults);
        }
    }

    private void pairs(List<String> pairs, String pointer) {
        List<String> known = Arrays.stream(Pair.values())
                .map(pair -> pair.name().toLowerCase(Locale.ROOT))
                .toList();
        for (int i = 0; i < pairs.size(); i++) {
            if (!known.contains(pairs.get(i).toLowerCase(Locale.ROOT))) {
                faults.add(Fault.of(
                        plan.at(pointer + "/" + i).field("pairs"),
                        "unknownCode",
                        pairs.get(i),
                        known.stream().collect(Collectors.joining(", "))));
            }
        }
    }
}
