package wainbook.page;

import java.util.Optional;

/**
 * Why a page cannot be shown.
 *
 * @param kind what happened
 * @param detail more about it, in words
 * @param reference what to quote when asking for help
 */
public record Trouble(Kind kind, Optional<String> detail, Optional<String> reference) {

    /** What can happen to a request, each with its own words. */
    public enum Kind {
        FORBIDDEN(403, "forbidden"),
        FOREIGN(400, "foreign"),
        MISSING(404, "missing"),
        STALE(409, "stale"),
        FAILED(500, "failed");

        private final int status;
        private final String name;

        Kind(int status, String name) {
            this.status = status;
            this.name = name;
        }

        public int status() {
            return status;
        }

        public String title() {
            return Words.of("page." + name + "Title");
        }

        public String text() {
            return Words.of("page." + name + "Text");
        }

        public String next() {
            return Words.of("page." + name + "Next");
        }
    }

    public static Trouble of(Kind kind) {
        return new Trouble(kind, Optional.empty(), Optional.empty());
    }

    public static Trouble failed(String reference) {
        return new Trouble(Kind.FAILED, Optional.empty(), Optional.of(reference));
    }

    public Trouble because(String text) {
        return new Trouble(kind, Optional.of(text), reference);
    }
}
