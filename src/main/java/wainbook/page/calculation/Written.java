package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.Always;
import wainbook.engineering.Faults;
import wainbook.engineering.Sentence;
import wainbook.engineering.Step;
import wainbook.page.Words;

/** Values of a calculation as JSON: numbers as they are, sentences in words, what is absent left out. */
final class Written {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private Written() {}

    static ObjectNode object() {
        return JSON.objectNode();
    }

    static String text(Sentence sentence) {
        return Words.of(sentence.key(), sentence.arguments().toArray());
    }

    static JsonNode of(Object value) {
        if (value instanceof Sentence sentence) {
            return JSON.textNode(text(sentence));
        }
        if (value instanceof Optional<?> optional) {
            return optional.<JsonNode>map(Written::of).orElse(JSON.nullNode());
        }
        if (value instanceof Record parts) {
            return record(parts);
        }
        if (value instanceof Iterable<?> many) {
            ArrayNode array = JSON.arrayNode();
            many.forEach(one -> array.add(of(one)));
            return array;
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = object();
            map.forEach((name, one) -> object.set(String.valueOf(name), of(one)));
            return object;
        }
        return scalar(value);
    }

    private static JsonNode record(Record parts) {
        ObjectNode object = object();
        for (RecordComponent part : parts.getClass().getRecordComponents()) {
            Object value = Faults.get(part, parts);
            if (!Optional.empty().equals(value) || part.isAnnotationPresent(Always.class)) {
                object.set(part.getName(), of(value));
            }
        }
        if (parts instanceof Step step) {
            object.put("name", Words.of("engineering.step." + step.name()));
        }
        return object;
    }

    /** Adding zero takes the sign from a negative zero. */
    private static JsonNode scalar(Object value) {
        if (value instanceof Double number) {
            return JSON.numberNode(number + 0.0);
        }
        if (value instanceof Number number) {
            return JSON.numberNode(number.longValue());
        }
        return value instanceof Boolean truth ? JSON.booleanNode(truth) : JSON.textNode(String.valueOf(value));
    }
}
