package wainbook.handover.requirement;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.predicate.Answer;
import wainbook.predicate.Compiled;
import wainbook.predicate.Predicate;
import wainbook.process.VehicleFacts;

/**
 * Decides for a vehicle which documents a set of rules asks for. A fact that nobody knows makes a question, never a 'not
 * needed'. Compiles the rules once; thread-safe.
 */
public final class Requirements {

    private final RuleSet rules;
    private final Map<String, Predicate> compiled = new HashMap<>();

    /** Throws {@link IllegalArgumentException} if a rule's condition cannot be read, naming rule and place. */
    public Requirements(RuleSet rules) {
        this.rules = rules;
        for (Rule rule : rules.rules()) {
            rule.when().ifPresent(text -> compile(rule, text));
            rule.askWhen().ifPresent(text -> compile(rule, text));
            rule.noteWhen().ifPresent(text -> compile(rule, text));
        }
    }

    public RuleSet rules() {
        return rules;
    }

    /**
     * One answer a rule, in the order of the set.
     *
     * @param day the day of handover
     * @param stated the vehicle's facts, in any form that {@link StatedFacts} takes
     */
    public List<Requirement> on(LocalDate day, Map<String, ?> stated) {
        Map<String, Object> facts = StatedFacts.plain(stated);
        return rules.on(day).stream().map(rule -> requirement(rule, day, facts)).toList();
    }

    private Requirement requirement(Rule rule, LocalDate day, Map<String, Object> facts) {
        if (!rule.inForceOn(day) && !rule.inDoubtOn(day)) {
            return new Requirement(
                    rule,
                    Requirement.Answer.NOT_NEEDED,
                    rule.from()
                            .filter(day::isBefore)
                            .map(first -> because(rule, "notYetInForce", day, first))
                            .orElseGet(() -> because(rule, "notInForce", day)),
                    Optional.empty(),
                    List.of(),
                    0);
        }
        Answer when = answer(rule.when(), facts).orElse(Answer.of(true));
        Answer doubt = answer(rule.askWhen(), facts).orElse(Answer.of(false));
        Optional<Reason> note = answer(rule.noteWhen(), facts)
                .filter(said -> !said.isNo())
                .map(said -> because(rule, rule.note().orElseThrow()));
        return when.fold(
                () -> rule.inDoubtOn(day) ? dateAsked(rule, note) : needed(rule, doubt, note, facts),
                () -> new Requirement(
                        rule,
                        Requirement.Answer.NOT_NEEDED,
                        because(rule, "notBecause", shown(rule.when(), facts)),
                        Optional.empty(),
                        List.of(),
                        0),
                ask -> asked(rule, ask, note));
    }

    private Requirement needed(Rule rule, Answer doubt, Optional<Reason> note, Map<String, Object> facts) {
        Reason because = rule.when().isEmpty()
                ? because(rule, "always")
                : because(rule, "neededBecause", shown(rule.when(), facts));
        return doubt.fold(
                () -> new Requirement(
                        rule,
                        Requirement.Answer.ASK,
                        because(rule, rule.ask().orElseThrow(), shown(rule.askWhen(), facts)),
                        note,
                        List.of(),
                        0),
                () -> new Requirement(
                        rule, Requirement.Answer.NEEDED, because, note, List.of(), documents(rule, facts)),
                ask -> asked(rule, ask, note));
    }

    private static Requirement dateAsked(Rule rule, Optional<Reason> note) {
        Reason because = because(rule, "dateDoubt", rule.from().orElseThrow());
        return new Requirement(rule, Requirement.Answer.ASK, because, note, List.of(), 0);
    }

    private static Requirement asked(Rule rule, Answer.Ask ask, Optional<Reason> note) {
        Reason because = ask.trouble()
                .map(trouble -> because(rule, "trouble", trouble))
                .orElseGet(() -> because(rule, "unknown", String.join(", ", ask.missing())));
        return new Requirement(rule, Requirement.Answer.ASK, because, note, ask.missing(), 0);
    }

    private static int documents(Rule rule, Map<String, Object> facts) {
        return rule.per()
                .map(per -> switch (per) {
                    case PACK_TYPE ->
                        facts.get("pack_types") instanceof Collection<?> types
                                ? (int) types.stream().distinct().count()
                                : 1;
                    case PACK -> facts.get("packs") instanceof Number packs ? packs.intValue() : 1;
                })
                .orElse(1);
    }

    private Optional<Answer> answer(Optional<String> condition, Map<String, Object> facts) {
        return condition.map(text -> compiled.get(text).answer(facts));
    }

    /** The facts that the condition looked at, as they stand. */
    private String shown(Optional<String> condition, Map<String, Object> facts) {
        Set<String> names = condition.map(text -> compiled.get(text).names()).orElse(Set.of());
        return names.stream()
                .sorted()
                .filter(facts::containsKey)
                .map(name -> name + " = " + facts.get(name))
                .collect(Collectors.joining(", "));
    }

    private static Reason because(Rule rule, String key, Object... arguments) {
        return Reason.of(
                "handover." + key,
                rule.source().document() + " " + rule.source().clause(),
                arguments);
    }

    private void compile(Rule rule, String text) {
        compiled.put(text, VehicleFacts.PREDICATES.compile(text).fold(predicate -> predicate, faults -> {
            Compiled.Fault first = faults.get(0);
            throw new IllegalArgumentException(
                    rule.id() + " " + first.line() + ":" + first.column() + " " + first.message());
        }));
    }
}
