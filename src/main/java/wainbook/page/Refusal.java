package wainbook.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/**
 * A reason in words. Its text has three parts, the end of a sentence, or a bar between blanks, between them; where there
 * are two, the first says why as well.
 *
 * @param what what is not possible
 * @param why the rule as it applies here; empty if the first part says it
 * @param next what to do now; empty if the text names nothing
 * @param source where the rule comes from
 * @param lift the page to do it on
 */
public record Refusal(String what, String why, String next, String source, Optional<String> lift) {

    public static List<Refusal> of(List<Reason> reasons, Formats formats) {
        return reasons.stream().map(reason -> of(reason, formats)).toList();
    }

    /** @param formats the works' local time, by which times among the arguments are written */
    public static Refusal of(Reason reason, Formats formats) {
        List<String> parts = parts(Words.pattern(reason.key()));
        Object[] arguments = reason.arguments().stream().map(formats::argument).toArray();
        List<String> said = new ArrayList<>();
        for (String part : parts) {
            said.add(part.isEmpty() ? "" : Words.format(part, arguments));
        }
        return new Refusal(said.get(0), said.get(1), said.get(2), reason.source(), reason.lift());
    }

    /** What a rule says, and why, where it is known by its key alone: what it was about is left open. */
    public static String bare(String key) {
        if (Words.find(key).isEmpty()) {
            return key;
        }
        List<String> parts = parts(Words.pattern(key));
        String said = (parts.get(0) + " " + parts.get(1)).strip();
        Object[] unknown = new Object[9];
        Arrays.fill(unknown, "…");
        return Words.format(said.replaceAll("\\{(\\d)[^{}]*}", "{$1}"), unknown);
    }

    /** Split before the arguments go in, so that a full stop in a name never ends a sentence. */
    static List<String> parts(String pattern) {
        String[] cut =
                pattern.contains(" | ") ? pattern.split(" \\| ", 3) : pattern.split("(?<=\\.)\\s+(?=\\p{Lu}|\\{)", 3);
        return switch (cut.length) {
            case 1 -> List.of(cut[0], "", "");
            case 2 -> List.of(cut[0], "", cut[1]);
            default -> List.of(cut);
        };
    }
}
