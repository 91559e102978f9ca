package wainbook.handover.requirement;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The rules of one country or market, in one revision, with those it includes. A rule may stand in several versions, each in
 * force for a time of its own.
 */
public record RuleSet(String set, int revision, List<Rule> rules) {

    private static final ObjectMapper YAML = YAMLMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** The sets that a vehicle can be judged by. */
    private static final List<String> NAMES = List.of("GB", "EU", "DE");

    public RuleSet {
        rules = List.copyOf(rules);
        for (List<Rule> versions : byId(rules)) {
            for (int i = 0; i < versions.size(); i++) {
                for (Rule later : versions.subList(i + 1, versions.size())) {
                    if (versions.get(i).meets(later)) {
                        throw new IllegalArgumentException("two rules are called " + later.id() + " on the same day");
                    }
                }
            }
        }
    }

    /** One version of each rule: the one in force that day, else the next to come, else the last. */
    public List<Rule> on(LocalDate day) {
        return byId(rules).stream().map(versions -> on(day, versions)).toList();
    }

    private static Rule on(LocalDate day, List<Rule> versions) {
        return versions.stream()
                .sorted(Comparator.comparing(rule -> rule.from().orElse(LocalDate.MIN)))
                .filter(rule -> rule.to().filter(day::isAfter).isEmpty())
                .findFirst()
                .orElseGet(() -> versions.stream()
                        .max(Comparator.comparing(rule -> rule.to().orElse(LocalDate.MAX)))
                        .orElseThrow());
    }

    private static Collection<List<Rule>> byId(List<Rule> rules) {
        return rules.stream()
                .collect(Collectors.groupingBy(Rule::id, LinkedHashMap::new, Collectors.toList()))
                .values();
    }

    /** The names of the sets that have rules. */
    public static List<String> there() {
        return NAMES.stream()
                .filter(set -> RuleSet.class.getResource(path(set)) != null)
                .toList();
    }

    /** The set that the program carries under a name; empty when there is none. */
    public static Optional<RuleSet> named(String set) {
        if (!set.matches("[A-Z]{2}")) {
            return Optional.empty();
        }
        try (InputStream file = RuleSet.class.getResourceAsStream(path(set))) {
            return file == null
                    ? Optional.empty()
                    : Optional.of(YAML.readValue(file, RuleFile.class)
                            .whole(other -> named(other).orElseThrow()));
        } catch (IOException broken) {
            throw new UncheckedIOException("rule set " + set, broken);
        }
    }

    private static String path(String set) {
        return "/rules/documents-" + set + ".yaml";
    }
}
