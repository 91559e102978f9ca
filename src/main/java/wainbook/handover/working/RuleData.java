package wainbook.handover.working;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Rule files of the program, read once. */
final class RuleData {

    private static final JsonMapper YAML = JsonMapper.builder(new YAMLFactory())
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private RuleData() {}

    static <T> T read(String name, Class<T> type) {
        try (InputStream file = RuleData.class.getResourceAsStream("/rules/" + name + ".yaml")) {
            return YAML.readValue(file, type);
        } catch (IOException broken) {
            throw new UncheckedIOException(name, broken);
        }
    }
}
