package wainbook.handover.requirement;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A set of rules as it is written. It may include rules of others, so that one rule stands in one place.
 *
 * @param includes what holds besides the file's own rules; absent: nothing
 */
record RuleFile(String set, int revision, Optional<List<Inclusion>> includes, List<Rule> rules) {

    /**
     * Rules of another set.
     *
     * @param revision the other's revision that was looked at: a handover freezes the revision of the set it was judged by, so
     *     a set is revised whenever one that it includes is
     * @param only their ids; absent: all of them
     */
    record Inclusion(String set, int revision, Optional<List<String>> only) {

        List<Rule> rules(RuleSet other) {
            if (other.revision() != revision) {
                throw new IllegalArgumentException("includes " + set + " revision " + revision + ", but it is at "
                        + other.revision() + ": look at what changed, and revise both");
            }
            Set<String> there = ids(other.rules());
            only.stream()
                    .flatMap(List::stream)
                    .filter(id -> !there.contains(id))
                    .forEach(id -> {
                        throw new IllegalArgumentException("there is no " + id + " in " + set);
                    });
            return other.rules().stream()
                    .filter(rule -> only.map(ids -> ids.contains(rule.id())).orElse(true))
                    .toList();
        }
    }

    /**
     * The file's own rules first, then what it includes without what its own take the place of.
     *
     * @param sets how another set is found by its name
     */
    RuleSet whole(Function<String, RuleSet> sets) {
        List<Rule> included = includes.stream()
                .flatMap(List::stream)
                .flatMap(inclusion -> inclusion.rules(sets.apply(inclusion.set())).stream())
                .toList();
        Set<String> there = ids(included);
        Set<String> replaced =
                rules.stream().flatMap(rule -> rule.replaces().stream()).collect(Collectors.toSet());
        replaced.stream().filter(id -> !there.contains(id)).forEach(id -> {
            throw new IllegalArgumentException(set + " replaces " + id + ", which it does not include");
        });
        return new RuleSet(
                set,
                revision,
                Stream.concat(rules.stream(), included.stream().filter(rule -> !replaced.contains(rule.id())))
                        .toList());
    }

    private static Set<String> ids(List<Rule> rules) {
        return rules.stream().map(Rule::id).collect(Collectors.toSet());
    }
}
