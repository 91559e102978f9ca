package wainbook.book;

import java.util.Optional;

/**
 * An entry in words.
 *
 * @param what what was done or said
 * @param value what was read, with its unit; empty where nothing was
 * @param passes the verdict, where there is one
 */
record Told(String what, String value, Optional<Boolean> passes) {

    static Told of(String what) {
        return new Told(what, "", Optional.empty());
    }

    static Told of(String what, String value) {
        return new Told(what, value, Optional.empty());
    }

    static Told judged(String what, String value, boolean passes) {
        return new Told(what, value, Optional.of(passes));
    }
}
