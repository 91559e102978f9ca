package wainbook.predicate;

import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.SimpleType;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What sort of value a fact has, and how a value of ours becomes one that an expression can read. */
public enum FactType {
    TEXT("string", SimpleType.STRING),
    TRUTH("bool", SimpleType.BOOL),
    WHOLE("int", SimpleType.INT),
    NUMBER("double", SimpleType.DOUBLE),
    DATE("date", SimpleType.TIMESTAMP),
    TEXTS("list of string", ListType.create(SimpleType.STRING));

    private final String word;
    final CelType cel;

    FactType(String word, CelType cel) {
        this.word = word;
        this.cel = cel;
    }

    /** As it is written in a declaration: {@code string}, {@code bool}, {@code int}, {@code double}, {@code date}. */
    public String word() {
        return word;
    }

    /** What was typed or stated, in this type; empty when it does not read. Several texts are parted by semicolons. */
    public Optional<Object> parse(String text) {
        return switch (this) {
            case TEXT -> text.isBlank() ? Optional.empty() : Optional.of(text);
            case TRUTH -> text.matches("true|false") ? Optional.of(Boolean.valueOf(text)) : Optional.empty();
            case WHOLE -> text.matches("-?\\d{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
            case NUMBER ->
                text.matches("-?\\d{1,12}(\\.\\d{1,6})?") ? Optional.of(new BigDecimal(text)) : Optional.empty();
            case DATE -> DateText.read(text).map(Object.class::cast);
            case TEXTS ->
                Optional.of(Arrays.stream(text.split(";"))
                        .map(String::strip)
                        .filter(part -> !part.isEmpty())
                        .toList());
        };
    }

    /** Empty when the value is not of this type; a whole number is a number too, and an ISO 8601 date may be text. */
    Optional<Object> read(Object value) {
        return switch (this) {
            case TEXT ->
                value instanceof String || value instanceof Enum ? Optional.of(value.toString()) : Optional.empty();
            case TRUTH -> value instanceof Boolean ? Optional.of(value) : Optional.empty();
            case WHOLE -> decimal(value).flatMap(FactType::exactLong);
            case NUMBER ->
                decimal(value)
                        .map(BigDecimal::doubleValue)
                        .filter(Double::isFinite)
                        .map(Object.class::cast);
            case DATE -> date(value).map(FactType::midnight);
            case TEXTS ->
                value instanceof Collection<?> texts && texts.stream().allMatch(String.class::isInstance)
                        ? Optional.of(List.copyOf(texts))
                        : Optional.empty();
        };
    }

    /** An expression knows instants only, so a date is its midnight in UTC, on both sides of a comparison. */
    static Instant midnight(LocalDate date) {
        return date.atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    private static Optional<LocalDate> date(Object value) {
        if (value instanceof LocalDate date) {
            return Optional.of(date);
        }
        return value instanceof String text ? DateText.read(text) : Optional.empty();
    }

    private static Optional<BigDecimal> decimal(Object value) {
        if (value instanceof BigDecimal decimal) {
            return Optional.of(decimal);
        }
        if (value instanceof Double number) {
            return number.isNaN() || number.isInfinite() ? Optional.empty() : Optional.of(BigDecimal.valueOf(number));
        }
        return value instanceof Number number ? Optional.of(new BigDecimal(number.toString())) : Optional.empty();
    }

    private static Optional<Object> exactLong(BigDecimal value) {
        try {
            return Optional.of(value.longValueExact());
        } catch (ArithmeticException notWhole) {
            return Optional.empty();
        }
    }
}
