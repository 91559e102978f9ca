package wainbook.engineering;

import java.util.Arrays;
import java.util.List;

/** Something to be said to a person: the text's key, {@code room.text}, and the figures in it. */
public record Sentence(String key, List<String> arguments) {

    public Sentence {
        arguments = List.copyOf(arguments);
    }

    /** Numbers are written plainly here, so that no locale changes them later. */
    public static Sentence of(String key, Object... arguments) {
        return new Sentence(key, Arrays.stream(arguments).map(Plain::text).toList());
    }

    /** The same in six digits, for figures that are held against no limit. */
    public static Sentence brief(String key, Object... arguments) {
        return of(
                key,
                Arrays.stream(arguments)
                        .map(one -> one instanceof Double number ? Plain.beside(Double.MAX_VALUE, number) : one)
                        .toArray());
    }
}
