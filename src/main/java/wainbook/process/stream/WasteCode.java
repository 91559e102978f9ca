package wainbook.process.stream;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An entry of the List of Waste as people write it: {@code 16 01 07*}.
 *
 * @param digits six of them
 * @param hazardous whether the List marks it with an asterisk
 */
public record WasteCode(String digits, boolean hazardous) {

    private static final Pattern FORM = Pattern.compile("\\s*\\d\\d\\s*\\d\\d\\s*\\d\\d\\s*[*]?\\s*");

    public static boolean looksLikeOne(String text) {
        return FORM.matcher(text).matches();
    }

    /** The six digits of what looks like a code. */
    static Optional<String> digits(String text) {
        return looksLikeOne(text) ? Optional.of(text.replaceAll("\\D", "")) : Optional.empty();
    }

    static boolean marked(String text) {
        return text.contains("*");
    }

    @Override
    public String toString() {
        return digits.substring(0, 2) + " " + digits.substring(2, 4) + " " + digits.substring(4)
                + (hazardous ? "*" : "");
    }
}
