package wainbook.process.page.form;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.PlanDraft;
import wainbook.process.plan.Check;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;

/** The forms of an isolation plan: its head, a source, a point, a check before the last lock comes off. */
final class PlanForms {

    /** A source with whether it comes aboard only during the work: the plan keeps the two sorts in two lists. */
    private record Aboard(Source source, boolean later) {}

    private static final int LONGEST_WAIT = 1_440;

    private static final PartForm<PlanDraft, PlanDraft> HEAD = new PartForm<>(
            Group.HEAD,
            List::of,
            (draft, heads) -> heads.get(0),
            plan -> "head",
            plan -> Map.of(
                    "code",
                    plan.code(),
                    "waitMinutes",
                    "" + plan.waitMinutes(),
                    "maximumVolt",
                    plan.maximumVolt().toPlainString(),
                    "mayTravel",
                    plan.mayTravel() ? "yes" : ""),
            (former, typed) -> head(former.orElseThrow(), typed),
            (draft, surroundings, typed) -> Stream.of(
                            Input.line("code"),
                            Input.whole("waitMinutes").in("min"),
                            Input.decimal("maximumVolt").in("V"),
                            Input.tick("mayTravel"))
                    .skip(surroundings.plan(draft.variant()).isPresent() ? 1 : 0)
                    .toList(),
            PartForm.Keep.ONE);

    private static final PartForm<PlanDraft, Aboard> SOURCE = new PartForm<>(
            Group.SOURCE,
            PlanForms::aboard,
            PlanForms::withSources,
            one -> one.source().code(),
            PlanForms::typed,
            (former, typed) -> new Aboard(
                    new Source(
                            typed.code("key"),
                            typed.text("name"),
                            typed.text("howOpened"),
                            typed.text("lockedAt"),
                            typed.text("howShown")),
                    typed.tick("later")),
            (draft, surroundings, typed) -> List.of(
                    Input.line("key"),
                    Input.line("name"),
                    Input.line("howOpened"),
                    Input.line("lockedAt"),
                    Input.line("howShown"),
                    Input.tick("later")),
            PartForm.Keep.ORDERED);

    private static final PartForm<PlanDraft, Point> POINT = new PartForm<>(
            Group.POINT,
            PlanDraft::points,
            PlanForms::withPoints,
            Point::code,
            point -> Map.of(
                    "key", point.code(),
                    "provesSource", point.source(),
                    "where", point.where(),
                    "phases", phases(point) ? "yes" : ""),
            (former, typed) -> new Point(
                    typed.code("key"),
                    typed.chosen("provesSource"),
                    typed.text("where"),
                    pairs(former, typed.tick("phases"))),
            (draft, surroundings, typed) -> List.of(
                    Input.line("key"),
                    Input.choice(
                            "provesSource",
                            draft.allSources().stream()
                                    .map(source -> new Option(
                                            source.code(),
                                            Words.of("process.codeAndTitle", source.code(), source.name())))
                                    .toList()),
                    Input.line("where"),
                    Input.tick("phases")),
            PartForm.Keep.ORDERED);

    private static final PartForm<PlanDraft, Check> CHECK = new PartForm<>(
            Group.CHECK,
            PlanDraft::restoration,
            PlanForms::withChecks,
            Check::code,
            check -> Map.of(
                    "key", check.code(),
                    "whatIsChecked", check.what(),
                    "onlyIfOpened", check.onlyIfOpened() ? "yes" : ""),
            (former, typed) -> new Check(typed.code("key"), typed.text("whatIsChecked"), typed.tick("onlyIfOpened")),
            (draft, surroundings, typed) ->
                    List.of(Input.line("key"), Input.line("whatIsChecked"), Input.tick("onlyIfOpened")),
            PartForm.Keep.ORDERED);

    static final List<PartForm<?, ?>> ALL = List.of(HEAD, SOURCE, POINT, CHECK);

    private PlanForms() {}

    private static PlanDraft head(PlanDraft plan, Typed typed) {
        return new PlanDraft(
                plan.variant(),
                typed.maybeCode("code").orElse(plan.code()),
                plan.sources(),
                plan.later(),
                plan.points(),
                typed.whole("waitMinutes", 1, LONGEST_WAIT),
                typed.decimal("maximumVolt"),
                typed.tick("mayTravel"),
                plan.restoration());
    }

    private static Map<String, String> typed(Aboard one) {
        return Map.of(
                "key", one.source().code(),
                "name", one.source().name(),
                "howOpened", one.source().howOpened(),
                "lockedAt", one.source().lockedAt(),
                "howShown", one.source().howShown(),
                "later", one.later() ? "yes" : "");
    }

    private static List<Aboard> aboard(PlanDraft plan) {
        var all = new ArrayList<Aboard>();
        plan.sources().forEach(source -> all.add(new Aboard(source, false)));
        plan.later().forEach(source -> all.add(new Aboard(source, true)));
        return all;
    }

    private static PlanDraft withSources(PlanDraft plan, List<Aboard> all) {
        return new PlanDraft(
                plan.variant(),
                plan.code(),
                all.stream().filter(one -> !one.later()).map(Aboard::source).toList(),
                all.stream().filter(Aboard::later).map(Aboard::source).toList(),
                plan.points(),
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                plan.restoration());
    }

    private static PlanDraft withPoints(PlanDraft plan, List<Point> points) {
        return new PlanDraft(
                plan.variant(),
                plan.code(),
                plan.sources(),
                plan.later(),
                points,
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                plan.restoration());
    }

    private static PlanDraft withChecks(PlanDraft plan, List<Check> checks) {
        return new PlanDraft(
                plan.variant(),
                plan.code(),
                plan.sources(),
                plan.later(),
                plan.points(),
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                checks);
    }

    private static boolean phases(Point point) {
        return point.pairs().stream().anyMatch(Point.Pair::alternating);
    }

    /** The two rails and the chassis always; the phases where a motor or inlet has them. What is not changed stays. */
    private static List<Point.Pair> pairs(Optional<Point> former, boolean phases) {
        Optional<Point> same = former.filter(point -> phases(point) == phases);
        if (same.isPresent()) {
            return same.get().pairs();
        }
        return List.copyOf(phases ? EnumSet.allOf(Point.Pair.class) : EnumSet.copyOf(Point.RAILS));
    }
}
