package wainbook.engineering;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds what is wrong with inputs, from the annotations on their record. */
public final class Faults {

    /** A record's component with its annotated type, which is slow to read and needed for each of thousands of readings. */
    private record Part(RecordComponent component, AnnotatedType type) {}

    private static final ClassValue<List<Part>> PARTS = new ClassValue<>() {
        @Override
        protected List<Part> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(component -> new Part(component, component.getAnnotatedType()))
                    .toList();
        }
    };

    private Faults() {}

    /** Every fault of these inputs, in the order of their fields; rules between fields only if there is none. */
    public static List<Fault> of(Record inputs) {
        List<Fault> faults = new ArrayList<>(inside("", inputs).toList());
        faults.addAll(exactlyOne(inputs.getClass(), field -> given(inputs, field)));
        return faults.isEmpty() ? between(inputs) : List.copyOf(faults);
    }

    /** Faults between the fields of inputs whose fields are each well. */
    public static List<Fault> between(Record inputs) {
        return inputs instanceof Checked checked ? checked.faults() : List.of();
    }

    /** Faults of one value, or of the elements inside it, against the annotations of its type. */
    public static Stream<Fault> at(String path, AnnotatedType type, Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.stream().flatMap(inner -> at(path, argument(type), inner));
        }
        if (value instanceof List<?> list) {
            AnnotatedType element = argument(type);
            Stream<Fault> elements = IntStream.range(0, list.size())
                    .boxed()
                    .flatMap(i -> at(path + "[" + i + "]", element, list.get(i)));
            return Stream.concat(size(path, type, list.size()).stream(), elements);
        }
        if (value instanceof Record nested) {
            return inside(path + ".", nested);
        }
        return value instanceof Number number ? number(path, type, number.doubleValue()).stream() : Stream.empty();
    }

    public static Optional<Fault> size(String path, AnnotatedType type, int size) {
        return Optional.ofNullable(type.getAnnotation(Size.class))
                .filter(allowed -> size < allowed.from() || size > allowed.to())
                .map(allowed -> Fault.of(path, "size", allowed.from(), allowed.to()));
    }

    public static List<Fault> exactlyOne(Class<?> inputs, Predicate<String> given) {
        return Optional.ofNullable(inputs.getAnnotation(ExactlyOne.class)).map(ExactlyOne::value).stream()
                .filter(fields -> Arrays.stream(fields).filter(given).count() != 1)
                .flatMap(fields ->
                        Arrays.stream(fields).map(field -> Fault.of(field, "exactlyOne", String.join(", ", fields))))
                .toList();
    }

    static boolean finite(Object value) {
        if (value instanceof Record parts) {
            return PARTS.get(parts.getClass()).stream().allMatch(part -> finite(get(part.component(), parts)));
        }
        if (value instanceof Optional<?> optional) {
            return optional.stream().allMatch(Faults::finite);
        }
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().allMatch(Faults::finite);
        }
        if (value instanceof Collection<?> many) {
            return many.stream().allMatch(Faults::finite);
        }
        return !(value instanceof Double number) || Double.isFinite(number);
    }

    /** What the component's own rule says against the value, where it has one. */
    public static List<Fault> allowed(String field, RecordComponent part, Object value) {
        Allowed allowed = part.getAnnotation(Allowed.class);
        if (allowed == null) {
            return List.of();
        }
        try {
            var rule = allowed.value().getDeclaredConstructor();
            rule.setAccessible(true);
            return rule.newInstance().faults(field, value);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot ask the rule of " + part, broken);
        }
    }

    /** The value of one component. */
    public static Object get(RecordComponent component, Record parts) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(parts);
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("cannot read " + component + " of " + parts, broken);
        }
    }

    private static Stream<Fault> inside(String path, Record inputs) {
        return PARTS.get(inputs.getClass()).stream().flatMap(part -> {
            String field = path + part.component().getName();
            Object value = get(part.component(), inputs);
            return Stream.concat(at(field, part.type(), value), allowed(field, part.component(), value).stream());
        });
    }

    private static boolean given(Record inputs, String field) {
        return Arrays.stream(inputs.getClass().getRecordComponents())
                .filter(part -> part.getName().equals(field))
                .anyMatch(part -> !Optional.empty().equals(get(part, inputs)));
    }

    private static AnnotatedType argument(AnnotatedType type) {
        return ((AnnotatedParameterizedType) type).getAnnotatedActualTypeArguments()[0];
    }

    private static Optional<Fault> number(String path, AnnotatedType type, double value) {
        if (!Double.isFinite(value)) {
            return Optional.of(Fault.of(path, "notFinite"));
        }
        return Optional.ofNullable(type.getAnnotation(Domain.class)).flatMap(domain -> against(domain, path, value));
    }

    private static Optional<Fault> against(Domain domain, String path, double value) {
        if (domain.oneOf().length > 0 && Arrays.stream(domain.oneOf()).noneMatch(allowed -> allowed == value)) {
            String allowed = Arrays.stream(domain.oneOf()).mapToObj(Plain::text).collect(Collectors.joining(", "));
            return Optional.of(Fault.of(path, "oneOf", allowed));
        }
        if (value <= domain.above()) {
            return Optional.of(Fault.of(path, "above", domain.above()));
        }
        if (value < domain.from()) {
            return Optional.of(Fault.of(path, "from", domain.from()));
        }
        if (value > domain.to()) {
            return Optional.of(Fault.of(path, "to", domain.to()));
        }
        return value >= domain.below() ? Optional.of(Fault.of(path, "below", domain.below())) : Optional.empty();
    }
}
