package wainbook.setup.files;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value and where it stood.
 *
 * @param parts the place of a part of it: of a column's cell by the column's name, of a YAML field by its JSON pointer
 */
record Located<T>(T value, Place place, Function<String, Place> parts) {

    Located(T value, Place place) {
        this(value, place, place::field);
    }

    Place at(String part) {
        return parts.apply(part);
    }

    /** Turns it into what a room knows; what that room refuses is a fault at this place. */
    <R> Optional<Located<R>> turned(Function<T, R> turn, List<Fault> faults) {
        try {
            return Optional.of(new Located<>(turn.apply(value), place, parts));
        } catch (IllegalArgumentException refused) {
            faults.add(Fault.of(place, "refusedValue", "the whole", refused.getMessage()));
            return Optional.empty();
        }
    }

    static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }
}
