package wainbook.line.balance.asked;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.engineering.balance.Rule;
import wainbook.line.balance.asked.PairRule.Sort;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.Place;

/**
 * What stands against a question before it is searched for: names that the line does not know, rules that say nothing, rules that
 * contradict each other, the sheets, or what stays. Each reason names its field, the same on the page and for scripts.
 */
public final class Objections {

    private final Asked asked;
    private final Content content;
    private final Question question;
    private final List<Reason> found = new ArrayList<>();

    private Objections(Asked asked) {
        this.asked = asked;
        this.content = asked.content();
        this.question = asked.question();
    }

    public static List<Reason> to(Asked asked) {
        var objections = new Objections(asked);
        objections.names();
        if (objections.found.isEmpty()) {
            objections.contradictions();
        }
        return List.copyOf(objections.found);
    }

    private void names() {
        unknown(question.itemsThatStay()).ifPresent(keys -> at("itemsThatStay", "line.balanceNoItem", keys));
        Set<String> stages = content.stages().stream().map(Place::stage).collect(Collectors.toSet());
        question.stagesThatStay().stream()
                .filter(stage -> !stages.contains(stage))
                .forEach(stage -> at("stagesThatStay", "line.balanceNoStage", stage));
        question.persons().keySet().stream()
                .filter(stage -> !stages.contains(stage))
                .sorted()
                .forEach(stage -> at("persons[" + stage + "]", "line.balanceNoStage", stage));
        IntStream.range(0, question.rules().size())
                .forEach(i -> rule("rules[" + i + "].", question.rules().get(i)));
    }

    private void rule(String field, PairRule rule) {
        side(field + "one", rule.sort(), rule.one());
        side(field + "other", rule.sort(), rule.other());
        rule.one().stream()
                .filter(rule.other()::contains)
                .findFirst()
                .ifPresent(key -> at(field + "other", "line.balanceRuleItself", key));
        int farthest = content.stages().size() - 1;
        if (rule.sort() == Sort.DISTANCE && (rule.stations() < 1 || rule.stations() > farthest)) {
            at(field + "stations", "line.wholeNumber", 1, farthest);
        }
    }

    private void side(String field, Sort sort, List<String> keys) {
        if (keys.isEmpty()) {
            at(field, "line.balanceRuleHalf");
        }
        if (keys.size() > PairRule.MOST_KEYS) {
            at(field, "line.balanceRuleMany", PairRule.MOST_KEYS);
        }
        unknown(keys).ifPresent(unknown -> at(field, "line.balanceNoItem", unknown));
        keys.stream()
                .filter(key -> sort == Sort.TOGETHER && content.called(key).size() > 1)
                .findFirst()
                .ifPresent(key -> at(field, "line.balanceTwoPlaces", key, stages(key)));
    }

    private Optional<String> unknown(List<String> keys) {
        return Optional.of(keys.stream()
                        .filter(key -> content.called(key).isEmpty())
                        .collect(Collectors.joining(", ")))
                .filter(text -> !text.isEmpty());
    }

    private String stages(String key) {
        Map<String, Integer> placed = content.placed();
        return content.called(key).stream()
                .map(item -> String.valueOf(number(placed.get(item.stage()))))
                .collect(Collectors.joining(", "));
    }

    /** A rule that contradicts what was asked before it is named and left out, so that the next is not blamed for it. */
    private void contradictions() {
        Spans first = Spans.of(asked);
        Spans kept = first;
        for (int i = 0; i < question.rules().size() && !first.contradicted(); i++) {
            kept = with(i, first, kept);
        }
    }

    private Spans with(int i, Spans first, Spans kept) {
        Spans narrowed = kept;
        for (Rule pair : question.rules().get(i).on(content)) {
            Spans next = narrowed.with(pair);
            if (next.contradicted()) {
                contradicted(i, pair, first);
                return kept;
            }
            narrowed = next;
        }
        return narrowed;
    }

    private void contradicted(int i, Rule pair, Spans first) {
        String field = "rules[" + i + "].one";
        String one = ids(pair).get(0);
        String other = ids(pair).get(1);
        if (first.with(pair).contradicted()) {
            at(
                    field,
                    "line.balanceRuleNever",
                    i + 1,
                    key(one),
                    words(first.of(one)),
                    key(other),
                    words(first.of(other)));
            return;
        }
        IntStream.range(0, i)
                .filter(j -> first.with(question.rules().get(j).on(content))
                        .with(pair)
                        .contradicted())
                .boxed()
                .findFirst()
                .ifPresentOrElse(
                        j -> at(field, "line.balanceRuleAgainst", i + 1, j + 1, key(one), key(other)),
                        () -> at(field, "line.balanceRuleAgainstAll", i + 1, key(one), key(other)));
    }

    private static List<String> ids(Rule pair) {
        if (pair instanceof Rule.Together together) {
            return List.of(together.one(), together.other());
        }
        if (pair instanceof Rule.Apart apart) {
            return List.of(apart.one(), apart.other());
        }
        return pair instanceof Rule.Distance distance ? List.of(distance.first(), distance.then()) : List.of();
    }

    private String key(String id) {
        return content.items().stream()
                .filter(item -> item.id().equals(id))
                .map(Item::key)
                .findFirst()
                .orElse(id);
    }

    private String words(Span span) {
        return Stream.of(span.first(), span.last())
                .distinct()
                .map(place -> String.valueOf(number(place)))
                .collect(Collectors.joining("–"));
    }

    private int number(int place) {
        return content.stages().get(place - 1).number();
    }

    private void at(String field, String key, Object... arguments) {
        found.add(Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt("#" + field));
    }
}
