package wainbook.print;

import java.time.Instant;
import java.util.Locale;

/**
 * What a document says of itself.
 *
 * @param title as a reader shows it instead of the file's name
 * @param about one sentence, kept with the file
 * @param language of the text
 * @param at the time the document bears: never that of its printing, or two printings would differ
 */
public record Heading(String title, String about, Locale language, Instant at) {
    public Heading {
        if (title.isBlank() || about.isBlank() || language.getLanguage().isEmpty()) {
            throw new IllegalArgumentException("a document has a title, a sentence about it and a language");
        }
    }
}
