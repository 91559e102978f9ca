package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever figures come, made from each calculation's own schema: an answer, a fault or a refusal, and never no number. */
class ExtremeFiguresTest {

    private static final int TRIES = 200;
    private static final double[] FIGURES = {
        0,
        -0.0,
        Double.MIN_VALUE,
        -Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1e-300,
        1e-9,
        0.1,
        0.5,
        1,
        2,
        3,
        7,
        100,
        500,
        700,
        1e9,
        1e154,
        1e300,
        1e308,
        Double.MAX_VALUE,
        -1,
        -1e308
    };
    private static final List<String> TEXTS =
            List.of("", "0", "A", "1M8GDM9AXKP042788", "079", "O\u0000I", "0109521234543213");

    static Stream<Sheet<?, ?>> sheets() {
        return new Calculations(Calculations.PURE.stream()).all().stream();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void never_give_an_error_or_a_figure_that_is_none(Sheet<?, ?> sheet) {
        var random = new SplittableRandom(sheet.name().hashCode());
        JsonNode schema = sheet.described().path("inputs");
        for (int i = 0; i < TRIES; i++) {
            boolean wild = i % 2 == 0;
            String body = value(schema, random, wild).toString();
            Reply reply = Body.read(body, sheet::answer);

            assertThat(reply.status()).as(body).isIn(200, 400, 422);
            assertThat(numbers(reply.body())).as(body).allMatch(Double::isFinite);
            assertThat(reply.body().toString()).as(body).doesNotContain("-0.0,", "-0.0}");
        }
    }

    @Test
    void a_guard_band_beyond_all_numbers_is_refused_and_not_written() {
        Sheet<?, ?> tightening = sheets().filter(sheet -> sheet.name().equals("tightening"))
                .findFirst()
                .orElseThrow();
        String body = "{\"readingNm\": 1e308, \"lowerNm\": 0, \"upperNm\": 1, \"intervalPercent\": 1e10}";

        assertThat(Body.read(body, tightening::answer).status()).isEqualTo(422);
    }

    private static Stream<Double> numbers(JsonNode node) {
        return node.isNumber()
                ? Stream.of(node.doubleValue())
                : java.util.stream.StreamSupport.stream(node.spliterator(), false)
                        .flatMap(ExtremeFiguresTest::numbers);
    }

    private static JsonNode value(JsonNode schema, SplittableRandom random, boolean wild) {
        if (schema.has("enum")) {
            return schema.path("enum").get(random.nextInt(schema.path("enum").size()));
        }
        return switch (schema.path("type").asText()) {
            case "object" -> object(schema, random, wild);
            case "array" -> array(schema, random, wild);
            case "integer" ->
                Written.of(random.nextInt(Math.max(1, schema.path("minimum").asInt(0)), 60));
            case "boolean" -> Written.of(random.nextInt(2) == 0);
            case "string" -> Written.of(TEXTS.get(random.nextInt(TEXTS.size())));
            default -> Written.of(number(schema, random, wild));
        };
    }

    private static ObjectNode object(JsonNode schema, SplittableRandom random, boolean wild) {
        ObjectNode object = Written.object();
        String either = schema.path("oneOf")
                .path(random.nextInt(Math.max(1, schema.path("oneOf").size())))
                .path("required")
                .path(0)
                .asText();
        boolean choice = schema.has("oneOf");
        schema.path("properties").properties().forEach(field -> {
            boolean required = schema.path("required").toString().contains("\"" + field.getKey() + "\"");
            boolean alternative = choice && schema.path("oneOf").toString().contains("\"" + field.getKey() + "\"");
            if (alternative ? field.getKey().equals(either) : required || random.nextInt(3) > 0) {
                object.set(field.getKey(), value(field.getValue(), random, wild));
            }
        });
        return object;
    }

    private static ArrayNode array(JsonNode schema, SplittableRandom random, boolean wild) {
        ArrayNode array = Written.object().putArray("a");
        int least = schema.path("minItems").asInt(0);
        int size = wild ? least + random.nextInt(4) : Math.max(least, 3);
        for (int i = 0; i < size; i++) {
            array.add(value(schema.path("items"), random, wild));
        }
        return array;
    }

    /** Half of them may be anything; the other half keep to what the field may hold, up to its very ends. */
    private static double number(JsonNode schema, SplittableRandom random, boolean wild) {
        double figure = FIGURES[random.nextInt(FIGURES.length)];
        if (wild && random.nextInt(8) == 0) {
            return figure;
        }
        double least = schema.has("exclusiveMinimum")
                ? Math.nextUp(schema.path("exclusiveMinimum").doubleValue())
                : schema.path("minimum").asDouble(-Double.MAX_VALUE);
        double most = schema.has("exclusiveMaximum")
                ? Math.nextDown(schema.path("exclusiveMaximum").doubleValue())
                : schema.path("maximum").asDouble(Double.MAX_VALUE);
        return Math.max(least, Math.min(most, figure));
    }
}
