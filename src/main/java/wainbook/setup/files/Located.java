package wainbook.setup.files;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A value and where it stood. */
record Located<T>(T value, Place place) {

    /** Turns it into what a room knows; what that room refuses is a fault at this place. */
    <R> Optional<Located<R>> turned(Function<T, R> turn, List<Fault> faults) {
        try {
            return Optional.of(new Located<>(turn.apply(value), place));
        } catch (IllegalArgumentException refused) {
            faults.add(Fault.of(place, "refusedValue", "the whole", refused.getMessage()));
            return Optional.empty();
        }
    }

    static <T> List<T> values(List<Located<T>> located) {
        return located.stream().map(Located::value).toList();
    }
}
