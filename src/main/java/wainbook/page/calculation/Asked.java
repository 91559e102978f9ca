package wainbook.page.calculation;

import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import wainbook.engineering.Domain;
import wainbook.engineering.ExactlyOne;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * One field of a calculation's form, from the component of its inputs.
 *
 * @param name as a script sends it
 * @param preset what stands in it at first
 * @param hint what it may hold
 * @param options where only these are possible
 */
public record Asked(
        String name,
        String label,
        Optional<String> unit,
        Kind kind,
        boolean optional,
        String preset,
        String hint,
        List<Option> options) {

    /** How a field is filled. */
    public enum Kind {
        NUMBER,
        TEXT,
        CHOICE,
        /** Several, one a line or with commas between them. */
        SEVERAL,
        /** Anything with parts of its own, written as JSON. */
        PARTS
    }

    /** For fields whose unit does not stand beside them. */
    public String labelWithUnit() {
        return unit.map(known -> Words.of("engineering.labelled", label, known)).orElse(label);
    }

    static List<Asked> of(String calculation, Class<? extends Record> inputs) {
        List<String> either = Optional.ofNullable(inputs.getAnnotation(ExactlyOne.class))
                .map(one -> List.of(one.value()))
                .orElse(List.of());
        return Arrays.stream(inputs.getRecordComponents())
                .map(part -> of(calculation, part, either.contains(part.getName()) ? either : List.of()))
                .toList();
    }

    /**
     * The name in words: the calculation's own, or the one that all share; a calculation that was added without any shows the
     * bare name.
     */
    static String label(String calculation, String name) {
        return Words.find("engineering." + calculation + ".field." + name)
                .or(() -> Words.find("engineering.field." + name))
                .orElse(name);
    }

    private static Asked of(String calculation, RecordComponent part, List<String> either) {
        boolean optional = part.getType() == Optional.class;
        AnnotatedType type = optional ? Types.argument(part.getAnnotatedType(), 0) : part.getAnnotatedType();
        String preset = Optional.ofNullable(part.getAnnotation(Preset.class))
                .map(Preset::value)
                .orElse("");
        List<Option> options = options(type);
        Kind kind = options.isEmpty() ? kind(type) : Kind.CHOICE;
        return new Asked(
                part.getName(),
                label(calculation, part.getName()),
                Units.of(part.getName()),
                kind,
                optional && either.isEmpty(),
                kind == Kind.SEVERAL ? preset.replaceAll("[\\[\\]]", "") : preset,
                hint(calculation, part.getName(), kind, type, either),
                options);
    }

    private static Kind kind(AnnotatedType type) {
        Class<?> raw = Types.raw(type);
        if (raw == List.class) {
            return Scalar.of(Types.raw(Types.argument(type, 0))).isPresent() ? Kind.SEVERAL : Kind.PARTS;
        }
        return Scalar.of(raw)
                .map(scalar -> Typed.counts(scalar) ? Kind.NUMBER : Kind.TEXT)
                .orElse(Kind.PARTS);
    }

    private static List<Option> options(AnnotatedType type) {
        Class<?> raw = Types.raw(type);
        Stream<String> allowed = Stream.empty();
        if (raw.isEnum()) {
            allowed = Arrays.stream(raw.getEnumConstants()).map(String::valueOf);
        } else if (raw == boolean.class || raw == Boolean.class) {
            allowed = Stream.of("true", "false");
        } else if (type.isAnnotationPresent(Domain.class)) {
            allowed = DoubleStream.of(type.getAnnotation(Domain.class).oneOf()).mapToObj(Plain::text);
        }
        return allowed.map(one ->
                        new Option(one, Words.find("engineering.choice." + one).orElse(one)))
                .toList();
    }

    private static String hint(String calculation, String name, Kind kind, AnnotatedType type, List<String> either) {
        AnnotatedType bounded = kind == Kind.SEVERAL ? Types.argument(type, 0) : type;
        Stream<String> several = switch (kind) {
            case SEVERAL -> Stream.of(Words.of("engineering.severalHint"));
            case PARTS -> Stream.of(Rows.fit(type) ? Rows.hint(calculation, type) : parts(type));
            case NUMBER, TEXT, CHOICE -> Stream.empty();
        };
        Stream<String> one = either.isEmpty()
                ? Stream.empty()
                : Stream.of(Words.of(
                        "engineering.eitherHint",
                        either.stream().map(field -> label(calculation, field)).collect(Collectors.joining(", "))));
        return Stream.of(Stream.of(name), several, bounds(bounded), one)
                .flatMap(parts -> parts)
                .collect(Collectors.joining(" · "));
    }

    private static String parts(AnnotatedType type) {
        Class<?> raw = Types.raw(type);
        return raw.isRecord()
                ? Words.of(
                        "engineering.partsNamedHint",
                        Arrays.stream(raw.getRecordComponents())
                                .map(RecordComponent::getName)
                                .collect(Collectors.joining(", ")))
                : Words.of("engineering.partsHint");
    }

    private static Stream<String> bounds(AnnotatedType type) {
        return Optional.ofNullable(type.getAnnotation(Domain.class)).stream()
                .flatMap(domain -> Stream.of(
                        bound("engineering.boundAbove", domain.above()),
                        bound("engineering.boundFrom", domain.from()),
                        bound("engineering.boundTo", domain.to()),
                        bound("engineering.boundBelow", domain.below())))
                .flatMap(Optional::stream);
    }

    private static Optional<String> bound(String key, double value) {
        return Double.isFinite(value) ? Optional.of(Words.of(key, Plain.text(value))) : Optional.empty();
    }
}
