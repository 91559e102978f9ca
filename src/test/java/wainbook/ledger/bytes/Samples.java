package wainbook.ledger.bytes;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Kind;

/**
 * Makes one value of any record that the ledger can hold, always the same: everything that may be absent is there, lists
 * have one element, and decimals and days grow from component to component, so that a lower limit is below an upper one.
 */
final class Samples {

    private final Map<String, String> overrides;
    private int made;

    private Samples(Map<String, String> overrides) {
        this.overrides = overrides;
    }

    /**
     * A sample of the type.
     *
     * @param overrides whole values in canonical JSON, by the kind's name or the record's simple name, for records whose
     *     invariants refuse what is made here
     */
    static <T> T of(Class<T> type, Map<String, String> overrides) {
        return type.cast(new Samples(overrides).object(type));
    }

    private Object value(Type type, String name) {
        made++;
        if (type instanceof ParameterizedType generic) {
            Object held = value(generic.getActualTypeArguments()[0], name);
            return generic.getRawType() == List.class ? List.of(held) : Optional.of(held);
        }
        return simple((Class<?>) type, name);
    }

    private Object simple(Class<?> type, String name) {
        if (type == String.class) {
            return text(name);
        } else if (type == int.class || type == Integer.class) {
            return 1 + made % 9;
        } else if (type == long.class || type == Long.class) {
            return (long) made;
        } else if (type == boolean.class || type == Boolean.class) {
            return true;
        } else if (type == BigDecimal.class) {
            return BigDecimal.valueOf(made * 100L, 2);
        } else if (type == Instant.class) {
            return Instant.parse("2026-03-02T06:00:00.000001Z").plusSeconds(60L * made);
        } else if (type == LocalDate.class) {
            return LocalDate.of(2026, 3, 1).plusDays(made);
        } else if (type == UUID.class) {
            return new UUID(0x4000, Long.MIN_VALUE + made);
        } else if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return object(type.isSealed() ? type.getPermittedSubclasses()[0] : type);
    }

    private static String text(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.contains("sha256") || lower.contains("hash") || lower.contains("fingerprint")) {
            return Said.sha256(name.getBytes(StandardCharsets.UTF_8));
        }
        return lower.equals("zone") ? "Europe/London" : name;
    }

    private Object object(Class<?> type) {
        Optional<String> override = Optional.ofNullable(type.getAnnotation(Kind.class))
                .map(kind -> overrides.get(kind.value()))
                .or(() -> Optional.ofNullable(overrides.get(type.getSimpleName())));
        if (override.isPresent()) {
            return CanonicalJson.read(CanonicalJson.parse(override.get()), type);
        }
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = Arrays.stream(components)
                .map(component -> value(component.getGenericType(), component.getName()))
                .toArray();
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException refused) {
            throw new IllegalArgumentException(
                    type.getName() + " refuses " + Arrays.toString(values) + ". Put a line for it into "
                            + GoldenEntriesTest.OVERRIDES,
                    refused);
        }
    }
}
