package wainbook.setup.files;

import java.util.List;
import java.util.Locale;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;

/** An isolation plan as a file says it, turned into the plan that is released, and back. */
public final class PlanFile {

    private PlanFile() {}

    public static Plan plan(Lines.IsolationPlan file) {
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

    public static Lines.IsolationPlan lines(Plan plan) {
        return new Lines.IsolationPlan(
                plan.code(),
                plan.revision(),
                plan.variant(),
                lines(plan.sources()),
                lines(plan.later()),
                plan.points().stream().map(PlanFile::line).toList(),
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                plan.restoration().stream()
                        .map(check -> new Lines.Restoration(check.code(), check.what(), check.onlyIfOpened()))
                        .toList());
    }

    private static List<Lines.Source> lines(List<Source> sources) {
        return sources.stream()
                .map(source -> new Lines.Source(
                        source.code(), source.name(), source.howOpened(), source.lockedAt(), source.howShown()))
                .toList();
    }

    private static Lines.Point line(Point point) {
        return new Lines.Point(
                point.code(),
                point.source(),
                point.where(),
                point.pairs().stream()
                        .map(pair -> pair.name().toLowerCase(Locale.ROOT))
                        .toList());
    }
}
