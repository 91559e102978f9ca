package wainbook.handover.requirement;

import jakarta.inject.Singleton;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The sets of rules that the program carries, each compiled once. */
@Singleton
public class RuleSets {

    private final Map<String, Requirements> compiled = new ConcurrentHashMap<>();

    public Optional<Requirements> named(String set) {
        return RuleSet.there().contains(set)
                ? Optional.of(compiled.computeIfAbsent(set, RuleSets::compile))
                : Optional.empty();
    }

    private static Requirements compile(String set) {
        return new Requirements(RuleSet.named(set).orElseThrow());
    }
}
