package wainbook.isolation.page;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wainbook.isolation.Danger;
import wainbook.isolation.Isolation;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Proof;
import wainbook.isolation.proof.Scope;
import wainbook.isolation.step.Wanted;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;

/**
 * The fields of a step's form: one for each component of what the step asks for, by its name. Steps that make safe stand
 * filled in with the careful answer, so that nobody in a hurry is sent back.
 */
record FormFields(Step step, Around around) {

    List<Field> all() {
        var fields = new ArrayList<Field>();
        for (RecordComponent component : Wanted.BY_STEP.get(step).getRecordComponents()) {
            fields.addAll(component.getName().equals("readings") ? readings() : List.of(field(component.getName())));
        }
        return fields;
    }

    private Field field(String name) {
        return switch (name) {
            case "confirmed" -> Field.checks(name, words("isolation.precaution.", step.confirmed()));
            case "box" -> Field.select(name, around.register(Register.Sort.LOCK_BOX), "");
            case "keys" -> Field.checks(name, around.register(Register.Sort.VEHICLE_KEY));
            case "tag" -> Field.select(name, around.register(Register.Sort.TAG), "");
            case "source" -> Field.select(name, sources(), nextSource());
            case "lock" -> lock();
            case "scope" -> Field.oneOf(name, scopes(), around.isolation().due().name());
            case "testerCode" ->
                step == Step.PROVE_TESTER_AFTER
                        ? Field.hidden(name, proof(Proof::tester))
                        : Field.select(name, around.instruments("voltage-tester", "multimeter"), "");
            case "sourceCode" ->
                step == Step.PROVE_TESTER_AFTER
                        ? Field.hidden(name, proof(Proof::source))
                        : Field.select(name, around.instruments("proving-unit"), "");
            case "sourceVolt", "readingVolt" -> Field.volts(name, "240");
            case "point" -> Field.hidden(name, nextPoint());
            case "tester" ->
                step == Step.ISSUE_LIVE_PERMIT
                        ? Field.select("liveTester", around.people(3), "")
                        : Field.hidden(name, proof(Proof::tester));
            case "receiver", "holder", "second" -> Field.select(name, around.people(2), "");
            case "pointsOfWork" -> Field.checks(name, around.points());
            case "validUntil" -> Field.time(name, around.shiftEnd());
            case "paper" -> Field.hidden(name, String.valueOf(paper()));
            case "permit" ->
                Field.hidden(
                        name,
                        String.valueOf(around.isolation()
                                .permit()
                                .map(permit -> permit.number())
                                .orElse(0)));
            case "cause" ->
                Field.oneOf(name, words("isolation.stop.", List.of(StopCause.values())), StopCause.ASKED.name());
            case "danger" ->
                Field.oneOf(name, words("isolation.danger.", List.of(Danger.values())), Danger.OTHER.name());
            case "locksSeen" -> Field.checks(name, around.allLocksOn());
            case "shownOpen", "clear" -> Field.tick(name);
            case "complete" -> Field.yesOrNo(name, "false");
            case "opened" -> Field.yesOrNo(name, "true");
            case "passed" -> Field.yesOrNo(name, "");
            case "instrumentCode" -> Field.select(name, around.instruments("insulation-tester"), "");
            case "glovesCode" -> Field.select(name, around.instruments("gloves"), "");
            case "check" -> Field.hidden(name, nextCheck());
            case "lookedFor" ->
                Field.checks(
                        name,
                        around.facts().sources().stream()
                                .map(code -> new Option(code, source(code)))
                                .toList());
            case "hazards" -> Field.text(name, Words.of("isolating.hazardsUsual"));
            default -> Field.text(name, "");
        };
    }

    /** What leaves no choice is chosen already. */
    private static Field onlyOne(String name, List<Option> options) {
        return Field.select(name, options, options.size() == 1 ? options.get(0).value() : "");
    }

    private Field lock() {
        return switch (step) {
            case LOCK_ON -> onlyOne("lock", around.ownLocks());
            case REPORT_ABANDONED_LOCK -> Field.select("lock", around.locksOn(false), "");
            case REMOVE_ABANDONED_LOCK ->
                Field.select(
                        "lock",
                        around.isolation().abandoned().stream()
                                .map(known -> new Option(
                                        known.lock(),
                                        known.lock() + ", " + around.name().apply(known.owner())))
                                .toList(),
                        "");
            case TELL_OWNER ->
                Field.select(
                        "lock",
                        around.isolation().toBeTold().stream()
                                .map(told -> new Option(
                                        told.lock(),
                                        told.lock() + ", " + around.name().apply(told.owner())))
                                .toList(),
                        "");
            default -> Field.select("lock", around.locksOn(true), "");
        };
    }

    private List<Field> readings() {
        return plan().flatMap(plan -> plan.point(nextPoint()).stream())
                .flatMap(point -> point.pairs().stream())
                .map(pair -> Field.volts("volt-" + pair.name(), "0"))
                .toList();
    }

    private List<Option> sources() {
        return plan().flatMap(plan -> Stream.concat(plan.sources().stream(), plan.later().stream()))
                .filter(source -> !around.isolation().isOpen(source.code()))
                .map(source -> new Option(source.code(), source.code() + ", " + source.name()))
                .toList();
    }

    private String nextSource() {
        return around.isolation().sources().stream()
                .map(Source::code)
                .filter(code -> !around.isolation().isOpen(code))
                .findFirst()
                .orElse("");
    }

    private String source(String code) {
        return plan().flatMap(plan -> plan.source(code).stream())
                .findFirst()
                .map(source -> code + ", " + source.name())
                .orElse(code);
    }

    private List<Option> scopes() {
        List<Scope> open = around.isolation().due() == Scope.POINTS_OF_WORK
                ? List.of(Scope.POINTS_OF_WORK, Scope.ALL_POINTS)
                : List.of(Scope.ALL_POINTS);
        return words("isolating.scope.", open);
    }

    /** The next point to touch for the first time, or again. */
    private String nextPoint() {
        Isolation now = around.isolation();
        List<String> points =
                now.proof().map(proof -> now.points(proof.scope())).orElse(now.points());
        return points.stream()
                .filter(code -> now.proof()
                        .flatMap(proof -> proof.point(code))
                        .map(read -> step == Step.MEASURE_POINT_AGAIN
                                && read.againAt().isEmpty())
                        .orElse(step == Step.MEASURE_POINT))
                .findFirst()
                .orElse("");
    }

    private String nextCheck() {
        return around.isolation().checks().stream()
                .filter(code -> !around.isolation().checksPassed().contains(code))
                .findFirst()
                .orElse("");
    }

    private int paper() {
        Isolation now = around.isolation();
        return now.sanction()
                .map(sanction -> sanction.number())
                .or(() -> now.live().map(live -> live.number()))
                .or(() -> now.permit().map(permit -> permit.number()))
                .orElse(0);
    }

    private String proof(java.util.function.Function<Proof, String> part) {
        return around.isolation().proof().map(part).orElse("");
    }

    private Stream<Plan> plan() {
        return around.isolation().plan().or(() -> around.facts().plan()).stream();
    }

    private static List<Option> words(String prefix, List<? extends Enum<?>> names) {
        return names.stream()
                .map(one -> new Option(one.name(), Words.of(prefix + one.name())))
                .toList();
    }
}
