package wainbook.page.calculation;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.function.Function;
import wainbook.engineering.Fault;

/**
 * The text of a request, read as one JSON value. NaN and Infinity are let through here, though they are no JSON, so that they
 * are reported at their field.
 */
final class Body {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Body() {}

    static Reply read(String text, Function<JsonNode, Reply> answer) {
        JsonNode body;
        try {
            body = JSON.readTree(text);
        } catch (JsonProcessingException malformed) {
            return Reply.faulty(List.of(Fault.of("", "json", malformed.getOriginalMessage())));
        }
        return answer.apply(body);
    }

    static JsonNode preset(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException malformed) {
            throw new IllegalStateException("a preset is no JSON: " + json, malformed);
        }
    }
}
