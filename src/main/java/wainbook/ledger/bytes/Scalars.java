package wainbook.ledger.bytes;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import java.io.IOException;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.Function;

/** The one form that each simple value has in the ledger. */
final class Scalars {

    private static final DateTimeFormatter SIX_DECIMALS = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private Scalars() {}

    static SimpleModule module() {
        var module = new SimpleModule("ledger scalars");
        text(module, String.class, Scalars::text, Function.identity());
        text(module, BigDecimal.class, BigDecimal::toPlainString, BigDecimal::new);
        text(module, Long.class, String::valueOf, Long::valueOf);
        text(module, Instant.class, Scalars::time, Instant::parse);
        module.addSerializer(Long.TYPE, new Writer<>(Long.class, String::valueOf));
        module.addDeserializer(Long.TYPE, new Reader<>(Long.class, Long::valueOf));
        return module;
    }

    /** An instant in UTC with six decimals, always. */
    static String time(Instant instant) {
        return SIX_DECIMALS.format(instant);
    }

    private static <T> void text(
            SimpleModule module, Class<T> type, Function<T, String> write, Function<String, T> read) {
        module.addSerializer(type, new Writer<>(type, write));
        module.addDeserializer(type, new Reader<>(type, read));
    }

    private static String text(String value) {
        for (int i = 0; i < value.length(); i++) {
            char unit = value.charAt(i);
            if (unit == 0) {
                throw new UnwritableText("text holds the character U+0000");
            }
            if (Character.isHighSurrogate(unit)
                    && i + 1 < value.length()
                    && Character.isLowSurrogate(value.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(unit)) {
                throw new UnwritableText("text holds half of a surrogate pair");
            }
        }
        return Normalizer.normalize(value, Normalizer.Form.NFC);
    }

    private static final class Writer<T> extends StdScalarSerializer<T> {
        private static final long serialVersionUID = 1L;
        private final transient Function<T, String> write;

        Writer(Class<T> type, Function<T, String> write) {
            super(type);
            this.write = write;
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(write.apply(value));
        }
    }

    private static final class Reader<T> extends StdScalarDeserializer<T> {
        private static final long serialVersionUID = 1L;
        private final transient Function<String, T> read;

        Reader(Class<T> type, Function<String, T> read) {
            super(type);
            this.read = read;
        }

        @Override
        public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
            if (in.currentToken() != JsonToken.VALUE_STRING) {
                return context.reportInputMismatch(this, "expected text");
            }
            try {
                return read.apply(in.getText());
            } catch (RuntimeException unreadable) {
                return context.reportInputMismatch(
                        this, "not a %s: %s", handledType().getSimpleName(), in.getText());
            }
        }
    }
}
