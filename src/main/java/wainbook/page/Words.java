package wainbook.page;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** What people read, by key: {@code gate.title} is {@code title} in {@code messages/gate.properties}. */
public final class Words {

    private Words() {}

    /**
     * The text under a key, filled in.
     *
     * @param key {@code room.text}
     * @throws MissingResourceException if no bundle has the key, naming both
     */
    public static String of(String key, Object... arguments) {
        int dot = key.indexOf('.');
        String pattern = ResourceBundle.getBundle("messages/" + key.substring(0, dot), Locale.ROOT)
                .getString(key.substring(dot + 1));
        Object[] texts = Arrays.stream(arguments).map(String::valueOf).toArray();
        return new MessageFormat(pattern, Locale.ROOT).format(texts);
    }
}
