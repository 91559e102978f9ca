package wainbook.setup.files;

import java.util.ArrayList;
import java.util.List;

/** What must hold within an isolation plan before the room of isolation looks at it. */
record PlanChecks(Located<Lines.IsolationPlan> plan, List<Fault> faults) {

    void run() {
        List<Located<Lines.Source>> sources = new ArrayList<>();
        plan.value().sources().forEach(source -> sources.add(new Located<>(source, plan.place())));
        plan.value().later().forEach(source -> sources.add(new Located<>(source, plan.place())));
        Codes known = Codes.of(sources, Lines.Source::code, plan.place().file(), faults, "source");
        for (Lines.Point point : plan.value().points()) {
            known.require(point.source(), plan.place().field(point.code()));
        }
        var proved = plan.value().points().stream().map(Lines.Point::source).toList();
        known.all().stream()
                .filter(code -> !proved.contains(code))
                .sorted()
                .forEach(code -> faults.add(Fault.of(plan.place().field("points"), "sourceUnproved", code, "a point")));
    }
}
