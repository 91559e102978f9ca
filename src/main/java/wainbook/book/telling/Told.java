package wainbook.book.telling;

import java.util.Optional;
import wainbook.page.Words;

/**
 * An entry in words.
 *
 * @param what what was done or said
 * @param value what was read, with its unit; empty where nothing was
 * @param verdict what it came to, where there is a verdict
 */
public record Told(String what, String value, Optional<Verdict> verdict) {

    /** What an entry came to, in a word or two. */
    public record Verdict(boolean passes, String word) {
        static Verdict of(boolean passes) {
            return new Verdict(passes, Words.of(passes ? "book.pass" : "book.fail"));
        }
    }

    static Told of(String what) {
        return new Told(what, "", Optional.empty());
    }

    static Told of(String what, String value) {
        return new Told(what, value, Optional.empty());
    }

    static Told judged(String what, String value, boolean passes) {
        return new Told(what, value, Optional.of(Verdict.of(passes)));
    }

    public Told judged(Verdict later) {
        return new Told(what, value, Optional.of(later));
    }
}
