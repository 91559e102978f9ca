package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.engineering.Fault;
import wainbook.engineering.Faults;
import wainbook.engineering.Preset;

/**
 * A JSON object read as a record of inputs, strictly: nothing unknown, nothing converted, and every fault found at once.
 *
 * @param inputs empty if a field could not be read
 */
record Binding<I extends Record>(Optional<I> inputs, List<Fault> faults) {

    static <I extends Record> Binding<I> of(Class<I> type, JsonNode body) {
        Reader reader = new Reader();
        Optional<I> inputs = reader.record("", type, body);
        if (body.isObject()) {
            reader.faults.addAll(Faults.exactlyOne(type, body::hasNonNull));
        }
        inputs.map(Faults::between).ifPresent(reader.faults::addAll);
        return new Binding<>(inputs, List.copyOf(reader.faults));
    }

    private static final class Reader {

        private final List<Fault> faults = new ArrayList<>();

        private <T extends Record> Optional<T> record(String path, Class<T> type, JsonNode node) {
            if (!node.isObject()) {
                return fault(path, "object");
            }
            String prefix = path.isEmpty() ? "" : path + ".";
            RecordComponent[] parts = type.getRecordComponents();
            Map<String, Optional<Object>> values = new LinkedHashMap<>();
            for (RecordComponent part : parts) {
                String at = prefix + part.getName();
                Optional<Object> value = part(at, part, node.path(part.getName()));
                value.ifPresent(held -> faults.addAll(Faults.allowed(at, part, held)));
                values.put(part.getName(), value);
            }
            node.fieldNames().forEachRemaining(name -> {
                if (!values.containsKey(name)) {
                    fault(prefix + name, "unknown");
                }
            });
            return values.values().stream().allMatch(Optional::isPresent)
                    ? Optional.of(made(type, parts, values))
                    : Optional.empty();
        }

        private Optional<Object> part(String path, RecordComponent part, JsonNode node) {
            boolean absent = node.isMissingNode() || node.isNull();
            if (absent && part.getType() == Optional.class) {
                return Optional.of(Optional.empty());
            }
            if (absent && part.isAnnotationPresent(Preset.class)) {
                JsonNode preset = Body.preset(part.getAnnotation(Preset.class).value());
                return value(path, part.getAnnotatedType(), preset);
            }
            return absent ? fault(path, "missing") : value(path, part.getAnnotatedType(), node);
        }

        private Optional<Object> value(String path, AnnotatedType type, JsonNode node) {
            Class<?> raw = Types.raw(type);
            if (raw == Optional.class) {
                return node.isNull()
                        ? Optional.of(Optional.empty())
                        : value(path, Types.argument(type, 0), node).map(Optional::of);
            }
            if (raw == Object.class) {
                return anything(path, node);
            }
            if (raw == List.class) {
                return list(path, type, node);
            }
            if (raw == Map.class) {
                return map(path, Types.argument(type, 1), node);
            }
            if (raw.isRecord()) {
                return record(path, raw.asSubclass(Record.class), node).map(Function.identity());
            }
            return raw.isEnum() ? constant(path, raw, node) : scalar(path, type, node);
        }

        private Optional<Object> list(String path, AnnotatedType type, JsonNode node) {
            if (!node.isArray()) {
                return fault(path, "array");
            }
            Faults.size(path, type, node.size()).ifPresent(faults::add);
            List<Object> elements = new ArrayList<>();
            for (int i = 0; i < node.size(); i++) {
                value(path + "[" + i + "]", Types.argument(type, 0), node.get(i))
                        .ifPresent(elements::add);
            }
            return elements.size() == node.size() ? Optional.of(List.copyOf(elements)) : Optional.empty();
        }

        private Optional<Object> map(String path, AnnotatedType type, JsonNode node) {
            if (!node.isObject()) {
                return fault(path, "object");
            }
            Map<String, Object> entries = new LinkedHashMap<>();
            node.properties()
                    .forEach(entry -> value(path + "." + entry.getKey(), type, entry.getValue())
                            .ifPresent(value -> entries.put(entry.getKey(), value)));
            return entries.size() == node.size() ? Optional.of(entries) : Optional.empty();
        }

        /** A single value, or lists and groups of such; whole numbers stay whole. */
        private Optional<Object> anything(String path, JsonNode node) {
            if (node.isArray()) {
                List<Object> elements = new ArrayList<>();
                for (int i = 0; i < node.size(); i++) {
                    anything(path + "[" + i + "]", node.get(i)).ifPresent(elements::add);
                }
                return elements.size() == node.size() ? Optional.of(elements) : Optional.empty();
            }
            if (node.isObject()) {
                Map<String, Object> parts = new LinkedHashMap<>();
                node.properties()
                        .forEach(part -> anything(path + "." + part.getKey(), part.getValue())
                                .ifPresent(value -> parts.put(part.getKey(), value)));
                return parts.size() == node.size() ? Optional.of(parts) : Optional.empty();
            }
            if (node.isNumber() && !Double.isFinite(node.doubleValue())) {
                return fault(path, "notFinite");
            }
            Optional<Object> value = Scalar.ANY.read(node);
            return value.isPresent() ? value : fault(path, Scalar.ANY.name());
        }

        private Optional<Object> constant(String path, Class<?> type, JsonNode node) {
            if (!node.isTextual()) {
                return fault(path, "string");
            }
            Optional<Object> named = Arrays.stream(type.getEnumConstants())
                    .filter(constant -> constant.toString().equals(node.textValue()))
                    .findFirst()
                    .map(Function.identity());
            String all =
                    Arrays.stream(type.getEnumConstants()).map(String::valueOf).collect(Collectors.joining(", "));
            return named.or(() -> fault(path, "oneOf", all));
        }

        private Optional<Object> scalar(String path, AnnotatedType type, JsonNode node) {
            Scalar kind = Scalar.of(Types.raw(type))
                    .orElseThrow(() -> new IllegalStateException(path + " has no JSON form: " + type));
            Optional<Object> value = kind.read(node);
            if (value.isEmpty()) {
                return fault(path, kind.name());
            }
            List<Fault> outside = Faults.at(path, type, value.get()).toList();
            faults.addAll(outside);
            return outside.isEmpty() ? value : Optional.empty();
        }

        private <T> Optional<T> fault(String path, String key, Object... arguments) {
            faults.add(Fault.of(path, key, arguments));
            return Optional.empty();
        }

        private static <T extends Record> T made(
                Class<T> type, RecordComponent[] parts, Map<String, Optional<Object>> values) {
            Class<?>[] types =
                    Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                var constructor = type.getDeclaredConstructor(types);
                constructor.setAccessible(true);
                return constructor.newInstance(
                        values.values().stream().map(Optional::orElseThrow).toArray());
            } catch (ReflectiveOperationException broken) {
                throw new IllegalStateException("cannot make " + type + " of " + values, broken);
            }
        }
    }
}
