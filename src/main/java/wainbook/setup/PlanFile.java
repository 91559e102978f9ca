package wainbook.setup;

import java.util.List;
import java.util.Locale;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;
import wainbook.setup.files.Lines;

/** An isolation plan as a file says it, turned into the plan that is released. */
final class PlanFile {

    private PlanFile() {}

    static Plan plan(Lines.IsolationPlan file) {
        return new Plan(
                file.code(),
                file.revision(),
                file.variant(),
                sources(file.sources()),
                sources(file.later()),
                file.points().stream().map(PlanFile::point).toList(),
                file.waitMinutes(),
                file.maximumVolt(),
                file.mayTravel(),
                file.restoration().stream()
                        .map(check -> new Check(check.code(), check.what(), check.onlyIfOpened()))
                        .toList());
    }

    private static List<Source> sources(List<Lines.Source> lines) {
        return lines.stream()
                .map(line -> new Source(line.code(), line.name(), line.howOpened(), line.lockedAt(), line.howShown()))
                .toList();
    }

    private static Point point(Lines.Point line) {
        return new Point(
                line.code(),
                line.source(),
                line.where(),
                line.pairs().stream()
                        .map(pair -> Point.Pair.valueOf(pair.toUpperCase(Locale.ROOT)))
                        .toList());
    }
}
