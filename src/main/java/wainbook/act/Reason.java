package wainbook.act;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Why something was refused: a value, so that a page, the API and a test all read the same. Its text lies in the message
 * bundle of the room that the key begins with: {@code gate.ownWork} is {@code ownWork} in {@code messages/gate}.
 *
 * @param key stable, {@code room.rule}
 * @param arguments what the text needs to be exact, in its order
 * @param source the rule's source with its clause, or {@link #PRACTICE}
 * @param lift where to go to lift it, a path of this app; absent where only another person or time lifts it
 */
public record Reason(String key, List<String> arguments, String source, Optional<String> lift) {

    /** For rules of the trade that have no published source. */
    public static final String PRACTICE = "common practice, no source";

    /** For rules that this design sets, so that a record stays honest. */
    public static final String WORKS_RULE = "works rule";

    public Reason {
        if (!key.matches("[a-z]+\\.[a-zA-Z0-9]+")) {
            throw new IllegalArgumentException("a reason's key is room.rule, not: " + key);
        }
        arguments = List.copyOf(arguments);
    }

    public static Reason of(String key, String source, Object... arguments) {
        return new Reason(key, Arrays.stream(arguments).map(String::valueOf).toList(), source, Optional.empty());
    }

    public Reason liftedAt(String path) {
        return new Reason(key, arguments, source, Optional.of(path));
    }
}
