package wainbook.page.calculation;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What was typed into a calculation's form, as the JSON that a script would send. What cannot be read stays text, so that the
 * same reader finds it at fault.
 */
final class Typed {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final JsonMapper READER = JsonMapper.builder().build();
    private static final Set<String> COUNTING = Set.of("number", "integer");

    private Typed() {}

    static boolean counts(Scalar scalar) {
        return COUNTING.contains(scalar.name());
    }

    static ObjectNode json(Class<? extends Record> inputs, Map<String, String> typed) {
        ObjectNode body = JSON.objectNode();
        typed.forEach((name, text) -> {
            if (!text.isBlank()) {
                body.set(name, read(inputs, name, text.strip()));
            }
        });
        return body;
    }

    private static JsonNode read(Class<? extends Record> inputs, String name, String text) {
        return Arrays.stream(inputs.getRecordComponents())
                .filter(part -> part.getName().equals(name))
                .map(RecordComponent::getAnnotatedType)
                .findFirst()
                .map(type -> value(type, text))
                .orElseGet(() -> JSON.textNode(text));
    }

    private static JsonNode value(AnnotatedType type, String text) {
        Class<?> raw = Types.raw(type);
        if (raw == Optional.class) {
            return value(Types.argument(type, 0), text);
        }
        if (raw.isEnum()) {
            return JSON.textNode(text);
        }
        Optional<Scalar> scalar = Scalar.of(raw);
        if (scalar.isPresent()) {
            return single(scalar.get(), text);
        }
        Optional<Scalar> elements = Optional.of(type)
                .filter(list -> Types.raw(list) == java.util.List.class)
                .flatMap(list -> Scalar.of(Types.raw(Types.argument(list, 0))));
        return elements.map(element -> several(element, text)).orElseGet(() -> parts(type, text));
    }

    /** Rows, one a line; or JSON, as a script writes it. */
    private static JsonNode parts(AnnotatedType type, String text) {
        boolean json = text.startsWith("[") || text.startsWith("{");
        return json || !Rows.fit(type) ? parts(text) : Rows.read(Types.argument(type, 0), text, Typed::value);
    }

    private static JsonNode several(Scalar element, String text) {
        ArrayNode array = JSON.arrayNode();
        Stream.of(text.split("[\\s,;]+"))
                .filter(part -> !part.isEmpty())
                .forEach(part -> array.add(single(element, part)));
        return array;
    }

    private static JsonNode single(Scalar scalar, String text) {
        return switch (scalar.name()) {
            case "number", "integer" -> number(text);
            case "boolean" ->
                text.equals("true") || text.equals("false")
                        ? JSON.booleanNode(text.equals("true"))
                        : JSON.textNode(text);
            default -> JSON.textNode(text);
        };
    }

    private static JsonNode number(String text) {
        try {
            return JSON.numberNode(new BigDecimal(text));
        } catch (NumberFormatException noNumber) {
            return JSON.textNode(text);
        }
    }

    private static JsonNode parts(String text) {
        try {
            return READER.readTree(text);
        } catch (JsonProcessingException noJson) {
            return JSON.textNode(text);
        }
    }
}
