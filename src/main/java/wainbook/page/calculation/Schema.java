package wainbook.page.calculation;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import wainbook.engineering.Always;
import wainbook.engineering.Domain;
import wainbook.engineering.ExactlyOne;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;

/** JSON Schema (2020-12) of a record, from its components and their annotations. */
final class Schema {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private Schema() {}

    static ObjectNode of(Class<? extends Record> type) {
        return Written.object().put("$schema", DIALECT).setAll(record(type));
    }

    private static ObjectNode record(Class<?> type) {
        ObjectNode schema = Written.object().put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        ArrayNode required = schema.putArray("required");
        for (RecordComponent part : type.getRecordComponents()) {
            properties.set(part.getName(), part(part));
            boolean optional = part.getType() == Optional.class || part.isAnnotationPresent(Preset.class);
            if (!optional || part.isAnnotationPresent(Always.class)) {
                required.add(part.getName());
            }
        }
        Optional.ofNullable(type.getAnnotation(ExactlyOne.class)).ifPresent(one -> {
            ArrayNode choices = schema.putArray("oneOf");
            Arrays.stream(one.value())
                    .forEach(field -> choices.addObject().putArray("required").add(field));
        });
        return schema.put("additionalProperties", false);
    }

    private static ObjectNode part(RecordComponent part) {
        ObjectNode schema = type(part.getAnnotatedType());
        Optional.ofNullable(part.getAnnotation(Preset.class))
                .ifPresent(preset -> schema.set("default", Body.preset(preset.value())));
        if (part.isAnnotationPresent(Always.class)) {
            String kind = schema.path("type").asText();
            schema.putArray("type").add(kind).add("null");
        }
        return schema;
    }

    private static ObjectNode type(AnnotatedType type) {
        Class<?> raw = Types.raw(type);
        ObjectNode schema = Written.object();
        if (raw == Optional.class) {
            return type(Types.argument(type, 0));
        }
        if (raw == List.class) {
            schema.put("type", "array").set("items", type(Types.argument(type, 0)));
            return sized(schema, type);
        }
        if (raw == Map.class) {
            schema.put("type", "object").set("additionalProperties", type(Types.argument(type, 1)));
            return schema;
        }
        if (raw.isRecord() && raw != Sentence.class) {
            return record(raw);
        }
        if (raw.isEnum()) {
            ArrayNode names = schema.put("type", "string").putArray("enum");
            Arrays.stream(raw.getEnumConstants()).map(String::valueOf).forEach(names::add);
            return schema;
        }
        return bounded(scalar(schema, raw), type);
    }

    private static ObjectNode scalar(ObjectNode schema, Class<?> raw) {
        String kind = Scalar.of(raw).map(Scalar::name).orElse("string");
        return switch (kind) {
            case "date" -> schema.put("type", "string").put("format", "date");
            case "scalar" -> schema;
            default -> schema.put("type", kind);
        };
    }

    private static ObjectNode sized(ObjectNode schema, AnnotatedType type) {
        Optional.ofNullable(type.getAnnotation(Size.class))
                .ifPresent(size -> schema.put("minItems", size.from()).put("maxItems", size.to()));
        return schema;
    }

    private static ObjectNode bounded(ObjectNode schema, AnnotatedType type) {
        Optional.ofNullable(type.getAnnotation(Domain.class)).ifPresent(domain -> {
            BiConsumer<String, Double> bound = (name, value) -> {
                if (Double.isFinite(value)) {
                    schema.put(name, value);
                }
            };
            bound.accept("exclusiveMinimum", domain.above());
            bound.accept("minimum", domain.from());
            bound.accept("maximum", domain.to());
            bound.accept("exclusiveMaximum", domain.below());
            if (domain.oneOf().length > 0) {
                ArrayNode allowed = schema.putArray("enum");
                Arrays.stream(domain.oneOf()).forEach(allowed::add);
            }
        });
        return schema;
    }
}
