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
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** The rules of one country or market, in one revision. */
public record RuleSet(String set, int revision, List<Rule> rules) {

    private static final ObjectMapper YAML = YAMLMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** The sets that a vehicle can be judged by one day; most have no rules yet. */
    private static final List<String> NAMES = List.of("GB", "EU", "DE");

    public RuleSet {
        var ids = new HashSet<String>();
        for (Rule rule : rules) {
            if (!ids.add(rule.id())) {
                throw new IllegalArgumentException("two rules are called " + rule.id());
            }
        }
        rules = List.copyOf(rules);
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
            return file == null ? Optional.empty() : Optional.of(YAML.readValue(file, RuleSet.class));
        } catch (IOException broken) {
            throw new UncheckedIOException("rule set " + set, broken);
        }
    }

    private static String path(String set) {
        return "/rules/documents-" + set + ".yaml";
    }
}
