package wainbook.ledger.bytes;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.erdtman.jcs.JsonCanonicalizer;

/**
 * Records to canonical JSON (RFC 8785) and back. Decimals and longs are strings, instants have six decimals, what is
 * absent is left out, text is NFC. Reading refuses unknown fields, doubled fields and every other form of the same value.
 */
public final class CanonicalJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .addModule(Scalars.module())
            .visibility(PropertyAccessor.GETTER, Visibility.NONE)
            .visibility(PropertyAccessor.IS_GETTER, Visibility.NONE)
            .visibility(PropertyAccessor.FIELD, Visibility.ANY)
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private CanonicalJson() {}

    static String write(Object value) {
        return canonical(MAPPER.valueToTree(value));
    }

    static String canonical(JsonNode tree) {
        try {
            return new String(new JsonCanonicalizer(tree.toString()).getEncodedUTF8(), StandardCharsets.UTF_8);
        } catch (IOException cannotBeCanonical) {
            throw new IllegalArgumentException(cannotBeCanonical.getMessage(), cannotBeCanonical);
        }
    }

    public static JsonNode tree(Object value) {
        return MAPPER.valueToTree(value);
    }

    /** Reads text that must be canonical already. */
    static JsonNode parse(String text) {
        JsonNode tree = parseStored(text);
        if (!tree.isObject() || !canonical(tree).equals(text)) {
            throw new IllegalArgumentException("not a JSON object in canonical form");
        }
        return tree;
    }

    /** Reads what must be written back as the same text. */
    public static <T> T read(JsonNode tree, Class<T> type) {
        T value = readStored(tree, type);
        if (!write(value).equals(canonical(tree))) {
            throw new IllegalArgumentException("reads as " + type.getSimpleName() + " but not back to the same text");
        }
        return value;
    }

    /** Reads text that was canonical when it was stored: whether it still is, verification says. */
    static JsonNode parseStored(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(broken.getOriginalMessage(), broken);
        }
    }

    /** As {@link #read}, of a tree that was written from such a value. */
    static <T> T readStored(JsonNode tree, Class<T> type) {
        try {
            return Whole.check(MAPPER.treeToValue(tree, type));
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(type.getSimpleName() + ": " + broken.getOriginalMessage(), broken);
        }
    }
}
