package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A kind of single value.
 *
 * @param name also the key of the message when something else came
 * @param reading empty if the JSON is of another kind; text is never taken for a number, nor a number for text
 */
record Scalar(String name, Function<JsonNode, Optional<Object>> reading) {

    private static final Scalar NUMBER =
            new Scalar("number", node -> node.isNumber() ? Optional.of(node.doubleValue()) : Optional.empty());
    private static final Scalar BOOLEAN =
            new Scalar("boolean", node -> node.isBoolean() ? Optional.of(node.booleanValue()) : Optional.empty());
    private static final Scalar STRING =
            new Scalar("string", node -> node.isTextual() ? Optional.of(node.textValue()) : Optional.empty());
    private static final Scalar INTEGER = new Scalar(
            "integer", node -> whole(node, Integer.MIN_VALUE, Integer.MAX_VALUE).map(BigDecimal::intValueExact));
    private static final Scalar LONG = new Scalar(
            "integer", node -> whole(node, Long.MIN_VALUE, Long.MAX_VALUE).map(BigDecimal::longValueExact));
    private static final Scalar DATE = new Scalar("date", Scalar::date);
    static final Scalar ANY = new Scalar(
            "scalar",
            node -> Stream.of(LONG, NUMBER, BOOLEAN, STRING)
                    .flatMap(kind -> kind.read(node).stream())
                    .findFirst());

    private static final Map<Class<?>, Scalar> KINDS = Map.of(
            double.class, NUMBER,
            Double.class, NUMBER,
            int.class, INTEGER,
            Integer.class, INTEGER,
            long.class, LONG,
            Long.class, LONG,
            boolean.class, BOOLEAN,
            String.class, STRING,
            LocalDate.class, DATE,
            Object.class, ANY);

    static Optional<Scalar> of(Class<?> type) {
        return Optional.ofNullable(KINDS.get(type));
    }

    Optional<Object> read(JsonNode node) {
        return reading.apply(node);
    }

    private static Optional<BigDecimal> whole(JsonNode node, long least, long most) {
        if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
            return Optional.empty();
        }
        return Optional.of(node.decimalValue())
                .filter(value -> value.stripTrailingZeros().scale() <= 0)
                .filter(value -> value.compareTo(BigDecimal.valueOf(least)) >= 0)
                .filter(value -> value.compareTo(BigDecimal.valueOf(most)) <= 0);
    }

    private static Optional<Object> date(JsonNode node) {
        try {
            return STRING.read(node).map(text -> LocalDate.parse((String) text));
        } catch (DateTimeParseException notADate) {
            return Optional.empty();
        }
    }
}
