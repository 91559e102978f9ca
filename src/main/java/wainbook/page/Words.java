package wainbook.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.Format;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The text that people read: {@code gate.title} is the key {@code title} of {@code messages/gate.properties}. */
public final class Words {

    public static final Locale LOCALE = Locale.UK;

    private static final Map<String, Map<String, String>> BUNDLES = new ConcurrentHashMap<>();

    private Words() {}

    /**
     * The text of a key.
     *
     * @param key {@code room.name}
     * @param arguments what {0}, {1} … stand for; a number may come as its text
     * @throws IllegalArgumentException naming key and file, if there is no such text
     */
    public static String of(String key, Object... arguments) {
        return format(pattern(key), arguments);
    }

    public static Optional<String> find(String key) {
        int dot = key.indexOf('.');
        return dot < 1
                ? Optional.empty()
                : Optional.ofNullable(bundle(key.substring(0, dot)).get(key.substring(dot + 1)));
    }

    static String pattern(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no text for " + key + " in " + file(key)));
    }

    static String format(String pattern, Object... arguments) {
        MessageFormat message = new MessageFormat(pattern, LOCALE);
        Format[] formats = message.getFormatsByArgumentIndex();
        Object[] fitting = new Object[Math.max(formats.length, arguments.length)];
        if (formats.length > arguments.length) {
            throw new IllegalArgumentException("{" + (formats.length - 1) + "} has no argument in: " + pattern);
        }
        for (int i = 0; i < arguments.length; i++) {
            boolean counts = i < formats.length && formats[i] != null;
            fitting[i] = counts ? number(arguments[i]) : String.valueOf(arguments[i]);
        }
        return message.format(fitting);
    }

    private static Object number(Object argument) {
        return argument instanceof Number ? argument : new BigDecimal(String.valueOf(argument));
    }

    private static String file(String key) {
        return "messages/" + key.substring(0, Math.max(key.indexOf('.'), 0)) + ".properties";
    }

    private static Map<String, String> bundle(String room) {
        return BUNDLES.computeIfAbsent(room, Words::read);
    }

    private static Map<String, String> read(String room) {
        String file = "messages/" + room + ".properties";
        try (InputStream bytes = Words.class.getClassLoader().getResourceAsStream(file)) {
            if (bytes == null) {
                return Map.of();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
            Map<String, String> texts = new TreeMap<>();
            read.forEach((key, text) -> texts.put((String) key, (String) text));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
