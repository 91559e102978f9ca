package wainbook.predicate;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What became of a condition's text: a predicate, or all that is wrong with it. */
public sealed interface Compiled {

    /**
     * One thing that is wrong, and where.
     *
     * @param line from 1
     * @param column from 1
     */
    record Fault(int line, int column, String message) {}

    record Sound(Predicate predicate) implements Compiled {
        @Override
        public <R> R fold(
                Function<? super Predicate, ? extends R> sound, Function<? super List<Fault>, ? extends R> faulty) {
            return sound.apply(predicate);
        }
    }

    record Faulty(List<Fault> faults) implements Compiled {
        public Faulty {
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("a faulty condition has at least one fault");
            }
            faults = List.copyOf(faults);
        }

        @Override
        public <R> R fold(
                Function<? super Predicate, ? extends R> sound, Function<? super List<Fault>, ? extends R> faulty) {
            return faulty.apply(faults);
        }
    }

    <R> R fold(Function<? super Predicate, ? extends R> sound, Function<? super List<Fault>, ? extends R> faulty);

    default Optional<Predicate> sound() {
        return fold(Optional::of, faults -> Optional.empty());
    }

    default List<Fault> faults() {
        return fold(predicate -> List.of(), faults -> faults);
    }
}
