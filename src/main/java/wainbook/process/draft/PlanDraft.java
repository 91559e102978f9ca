package wainbook.process.draft;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.process.ProcessSaying;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;

/** An isolation plan as a draft: as {@link Plan}, but it may be half written. */
public record PlanDraft(
        String variant,
        String code,
        List<Source> sources,
        List<Source> later,
        List<Point> points,
        int waitMinutes,
        BigDecimal maximumVolt,
        boolean mayTravel,
        List<Check> restoration)
        implements Drafted {

    public PlanDraft {
        sources = List.copyOf(sources);
        later = List.copyOf(later);
        points = List.copyOf(points);
        restoration = List.copyOf(restoration);
    }

    public static PlanDraft of(Plan plan) {
        return new PlanDraft(
                plan.variant(),
                plan.code(),
                plan.sources(),
                plan.later(),
                plan.points(),
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                plan.restoration());
    }

    @Override
    public About about() {
        return About.plan(variant);
    }

    @Override
    public String title() {
        return code;
    }

    public List<Source> allSources() {
        return Stream.concat(sources.stream(), later.stream()).toList();
    }

    @Override
    public List<Reason> faults(Surroundings surroundings) {
        var faults = new ArrayList<Reason>();
        if (sources.isEmpty()) {
            faults.add(fault("process.planWithoutSource", "head"));
        }
        if (waitMinutes < 1) {
            faults.add(fault("process.planWithoutWait", "head"));
        }
        if (maximumVolt.signum() <= 0) {
            faults.add(fault("process.planWithoutVolts", "head"));
        }
        if (restoration.stream().allMatch(Check::onlyIfOpened)) {
            faults.add(fault("process.planWithoutCheck", "head"));
        }
        code(surroundings, faults);
        var codes = new HashSet<String>();
        allSources().stream()
                .filter(source -> !codes.add(source.code()))
                .forEach(source -> faults.add(fault("process.sourceTwice", source.code())));
        Set<String> proved = points.stream().map(Point::source).collect(Collectors.toSet());
        codes.stream()
                .filter(source -> !proved.contains(source))
                .sorted()
                .forEach(source -> faults.add(fault("process.sourceProvedNowhere", source)));
        var places = new HashSet<String>();
        for (Point point : points) {
            if (!places.add(point.code())) {
                faults.add(fault("process.pointTwice", point.code()));
            }
            if (!codes.contains(point.source())) {
                faults.add(fault("process.pointOfNoSource", point.code(), point.source()));
            }
        }
        surroundings.plan(variant).ifPresent(now -> lost(now, codes, surroundings, faults));
        return List.copyOf(faults);
    }

    /** Files know a plan by its code: one code for each variant, the same for good. */
    private void code(Surroundings surroundings, List<Reason> faults) {
        for (Plan other : surroundings.plans()) {
            boolean own = other.variant().equals(variant);
            if (own && !other.code().equals(code)) {
                faults.add(fault("process.planCodeChanged", "head", other.code()));
            } else if (!own && other.code().equals(code)) {
                faults.add(fault("process.planCodeTaken", "head", code, other.variant()));
            }
        }
    }

    /** Sources that the plan would no longer name, though a vehicle has them aboard or the work will bring them there. */
    private void lost(Plan now, Set<String> named, Surroundings surroundings, List<Reason> faults) {
        for (Source source : PlanDraft.of(now).allSources()) {
            if (named.contains(source.code())) {
                continue;
            }
            surroundings.vehiclesOf(variant).stream()
                    .filter(vehicle -> vehicle.aboard().contains(source.code()))
                    .findFirst()
                    .ifPresent(vehicle ->
                            faults.add(fault("process.sourceAboard", source.code(), vehicle.order(), source.name())));
            surroundings.workedBy(variant).stream()
                    .flatMap(sheet -> sheet.items().stream()
                            .filter(item -> item.parts().stream()
                                    .anyMatch(use -> use.part().equals(source.code())))
                            .map(item -> fault("process.sourceFitted", source.code(), sheet.code(), item.key())))
                    .min(Comparator.comparing(fault -> String.join(" ", fault.arguments())))
                    .ifPresent(faults::add);
        }
    }

    private static Reason fault(String key, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments);
    }

    @Override
    public List<ProcessSaying> sayings(Revisions former) {
        return List.of(new ProcessSaying.PlanReleased(new Plan(
                code,
                former.revision() + 1,
                variant,
                sources,
                later,
                points,
                waitMinutes,
                maximumVolt,
                mayTravel,
                restoration)));
    }

    @Override
    public List<Part> parts() {
        var parts = new ArrayList<Part>();
        parts.add(Part.of(Part.Group.HEAD, "head", code)
                .say("code", code)
                .say("waitMinutes", Words.of("page.minutes", waitMinutes))
                .say("maximumVolt", maximumVolt.toPlainString() + " V")
                .yes("mayTravel", mayTravel)
                .part());
        allSources().forEach(source -> parts.add(part(source)));
        points.forEach(point -> parts.add(Part.of(Part.Group.POINT, point.code(), point.where())
                .say("where", point.where())
                .say("provesSource", point.source())
                .say(
                        "pairs",
                        point.pairs().stream()
                                .map(pair -> Words.of("process.pair." + pair))
                                .collect(Collectors.joining(", ")))
                .part()));
        restoration.forEach(check -> parts.add(Part.of(Part.Group.CHECK, check.code(), check.what())
                .say("whatIsChecked", check.what())
                .yes("onlyIfOpened", check.onlyIfOpened())
                .part()));
        return parts;
    }

    private Part part(Source source) {
        return Part.of(Part.Group.SOURCE, source.code(), source.name())
                .say("name", source.name())
                .say("howOpened", source.howOpened())
                .say("lockedAt", source.lockedAt())
                .say("howShown", source.howShown())
                .yes("later", later.contains(source))
                .part();
    }
}
