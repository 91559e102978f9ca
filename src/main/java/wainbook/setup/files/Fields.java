package wainbook.setup.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The fields in which two lines differ, however deep they lie. */
final class Fields {

    /** What the elements of a list are known by, where they are groups of fields. */
    private static final List<String> NAMES = List.of("key", "code", "stage", "title", "name", "side");

    private final List<Change.Field> found = new ArrayList<>();

    private Fields() {}

    static List<Change.Field> between(JsonNode was, JsonNode becomes) {
        var fields = new Fields();
        fields.compare("", Optional.of(was), Optional.of(becomes));
        return List.copyOf(fields.found);
    }

    private void compare(String path, Optional<JsonNode> was, Optional<JsonNode> becomes) {
        if (was.equals(becomes)) {
            return;
        }
        Map<String, JsonNode> before = was.map(Fields::parts).orElse(Map.of());
        Map<String, JsonNode> after = becomes.map(Fields::parts).orElse(Map.of());
        if (before.isEmpty() || after.isEmpty()) {
            found.add(new Change.Field(path, text(was), text(becomes)));
            return;
        }
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        int told = found.size();
        names.forEach(name -> compare(
                path.isEmpty() ? name : path + "/" + name,
                Optional.ofNullable(before.get(name)),
                Optional.ofNullable(after.get(name))));
        if (found.size() == told) {
            found.add(new Change.Field(path, String.join(", ", before.keySet()), String.join(", ", after.keySet())));
        }
    }

    /** The parts of a group, or of a list whose elements have names; none of anything else. */
    private static Map<String, JsonNode> parts(JsonNode node) {
        var parts = new LinkedHashMap<String, JsonNode>();
        if (node instanceof ObjectNode) {
            node.properties().forEach(field -> parts.put(field.getKey(), field.getValue()));
        } else if (node instanceof ArrayNode list) {
            for (JsonNode element : list) {
                Optional<String> name = NAMES.stream()
                        .filter(element::has)
                        .map(field -> element.get(field).asText())
                        .findFirst();
                if (name.isEmpty() || parts.put(name.get(), element) != null) {
                    return Map.of();
                }
            }
        }
        return parts;
    }

    private static String text(Optional<JsonNode> node) {
        return node.map(Fields::text).orElse("");
    }

    private static String text(JsonNode node) {
        if (node.isValueNode()) {
            return node.asText();
        }
        List<String> words = new ArrayList<>();
        node.forEach(element -> words.add(element.isValueNode() ? element.asText() : ""));
        return node.isArray() && !words.contains("") ? String.join(", ", words) : node.toString();
    }
}
