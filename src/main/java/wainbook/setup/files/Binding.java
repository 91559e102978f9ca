package wainbook.setup.files;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.exc.InvalidTypeIdException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Turns one element of a file into a record. The library stops at the first fault; here the faulty part is noted and cut
 * out, and the rest is tried again, so that somebody who mends a file sees all of them at once.
 */
final class Binding {

    /** For cells, where everything is text and a number is read out of it. */
    static final Binding CELLS = new Binding(mapper().build());

    /** For YAML, where a code without quotation marks may already have lost its leading zeros. */
    static final Binding TYPED = new Binding(mapper().withCoercionConfig(
                    LogicalType.Textual,
                    config -> config.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                            .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build());

    private final JsonMapper mapper;

    private Binding(JsonMapper mapper) {
        this.mapper = mapper;
    }

    private static JsonMapper.Builder mapper() {
        return JsonMapper.builder()
                .addModule(new Jdk8Module())
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .withConfigOverride(
                        List.class, list -> list.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
                .withConfigOverride(
                        boolean.class, truth -> truth.setSetterInfo(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)));
    }

    /** Empty when there was any fault; {@code place} finds a JSON pointer's place in the file. */
    <T> Optional<T> bind(JsonNode element, Class<T> type, Function<String, Place> place, List<Fault> faults) {
        JsonNode left = element.deepCopy();
        Set<String> told = new HashSet<>();
        Set<String> mended = new HashSet<>();
        while (true) {
            try {
                T value = mapper.treeToValue(left, type);
                return told.isEmpty() ? Optional.of(value) : Optional.empty();
            } catch (JsonMappingException wrong) {
                String pointer = pointer(wrong);
                if (!mended.add(pointer)) {
                    return Optional.empty();
                }
                // What refuses a whole may refuse only what stands in for a part that was faulty.
                if (told.stream().noneMatch(part -> part.startsWith(pointer + "/"))) {
                    told.add(pointer);
                    faults.add(fault(wrong, place.apply(pointer), left.at(pointer)));
                }
                mend(left, pointer, wrong);
            } catch (JsonProcessingException broken) {
                throw new IllegalStateException("a tree that was read cannot be read again", broken);
            }
        }
    }

    private static String pointer(JsonMappingException wrong) {
        return wrong.getPath().stream()
                .map(step -> "/" + (step.getFieldName() == null ? step.getIndex() : step.getFieldName()))
                .collect(Collectors.joining());
    }

    /** Cuts the faulty part out, or puts something readable in its place, so that reading goes on. */
    private static void mend(JsonNode tree, String pointer, JsonMappingException wrong) {
        int last = pointer.lastIndexOf('/');
        if (last < 0) {
            return;
        }
        JsonNode owner = tree.at(pointer.substring(0, last));
        String name = pointer.substring(last + 1);
        if (owner instanceof ObjectNode object) {
            object.remove(name);
            standIn(wrong).ifPresent(value -> object.set(name, value));
        } else if (owner instanceof ArrayNode array) {
            array.remove(Integer.parseInt(name));
        }
    }

    private static Optional<JsonNode> standIn(JsonMappingException wrong) {
        if (wrong instanceof UnrecognizedPropertyException
                || wrong instanceof InvalidTypeIdException
                || !(wrong instanceof MismatchedInputException mismatch)
                || mismatch.getTargetType() == null) {
            return Optional.empty();
        }
        Class<?> type = mismatch.getTargetType();
        if (type == String.class) {
            return Optional.of(TextNode.valueOf("missing"));
        }
        if (type.isEnum()) {
            return Optional.of(TextNode.valueOf(String.valueOf(type.getEnumConstants()[0])));
        }
        return Number.class.isAssignableFrom(type) || type == int.class
                ? Optional.of(IntNode.valueOf(1))
                : Optional.empty();
    }

    private static Fault fault(JsonMappingException wrong, Place place, JsonNode node) {
        String found = node.isMissingNode() ? "nothing" : node.isValueNode() ? node.asText() : node.toString();
        if (wrong instanceof UnrecognizedPropertyException unknown) {
            String known = unknown.getKnownPropertyIds().stream()
                    .map(String::valueOf)
                    .sorted()
                    .collect(Collectors.joining(", "));
            return Fault.of(place, "unknownField", unknown.getPropertyName(), known);
        }
        if (wrong instanceof ValueInstantiationException refused) {
            return Fault.of(
                    place,
                    "refusedValue",
                    found,
                    String.valueOf(refused.getCause().getMessage()));
        }
        if (wrong instanceof InvalidTypeIdException unknown) {
            String kind = Optional.ofNullable(unknown.getTypeId()).orElse("nothing");
            return Fault.of(place, "unknownKind", kind, ExpectedWords.kinds(unknown.getBaseType()));
        }
        String expected = wrong instanceof MismatchedInputException mismatch
                ? ExpectedWords.of(mismatch.getTargetType())
                : wrong.getOriginalMessage();
        return Fault.of(place, node.isMissingNode() ? "fieldMissing" : "wrongValue", found, expected);
    }
}
