package wainbook.line.cause;

import java.util.Optional;

/** Why a vehicle or a station stands as it does: one sentence, and where to go about it. */
public record Cause(String text, Optional<String> path) {

    static Cause of(String text) {
        return new Cause(text, Optional.empty());
    }

    public static Cause at(String path, String text) {
        return new Cause(text, Optional.of(path));
    }
}
