package wainbook.setup.files;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.databind.JavaType;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What would be right in a place, in plain words. */
final class ExpectedWords {

    private ExpectedWords() {}

    static String of(Class<?> type) {
        if (type == null) {
            return "a value";
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .map(constant -> constant.toString().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", "));
        }
        if (type == String.class) {
            return "text in quotation marks";
        }
        if (type == Integer.class || type == int.class) {
            return "a whole number";
        }
        if (type == BigDecimal.class) {
            return "a number";
        }
        return type == Boolean.class || type == boolean.class ? "true or false" : "a group of fields or a list";
    }

    /** The kinds that a field named {@code kind} may have. */
    static String kinds(JavaType base) {
        JsonSubTypes kinds = base.getRawClass().getAnnotation(JsonSubTypes.class);
        return kinds == null
                ? "a known kind"
                : Arrays.stream(kinds.value()).map(JsonSubTypes.Type::name).collect(Collectors.joining(", "));
    }
}
