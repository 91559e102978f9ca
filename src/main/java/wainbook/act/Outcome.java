package wainbook.act;

import java.util.List;
import java.util.function.Function;

/**
 * How an act came out. Callers use {@link #fold}, so that a new case breaks the build wherever it is not answered.
 *
 * @param <T> what the act yields when it is done
 */
public sealed interface Outcome<T> {

    /** The act was done now. */
    record Done<T>(T value) implements Outcome<T> {
        @Override
        public <R> R fold(
                Function<? super T, ? extends R> done,
                Function<? super T, ? extends R> alreadyDone,
                Function<? super List<Reason>, ? extends R> refused) {
            return done.apply(value);
        }
    }

    /** The very same act had been done before; nothing was written a second time. */
    record AlreadyDone<T>(T value) implements Outcome<T> {
        @Override
        public <R> R fold(
                Function<? super T, ? extends R> done,
                Function<? super T, ? extends R> alreadyDone,
                Function<? super List<Reason>, ? extends R> refused) {
            return alreadyDone.apply(value);
        }
    }

    /** The act was not done. Every reason that stands in its way is named, never only the first. */
    record Refused<T>(List<Reason> reasons) implements Outcome<T> {
        public Refused {
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("a refusal names at least one reason");
            }
            reasons = List.copyOf(reasons);
        }

        @Override
        public <R> R fold(
                Function<? super T, ? extends R> done,
                Function<? super T, ? extends R> alreadyDone,
                Function<? super List<Reason>, ? extends R> refused) {
            return refused.apply(reasons);
        }
    }

    static <T> Outcome<T> done(T value) {
        return new Done<>(value);
    }

    static <T> Outcome<T> alreadyDone(T value) {
        return new AlreadyDone<>(value);
    }

    static <T> Outcome<T> refused(List<Reason> reasons) {
        return new Refused<>(reasons);
    }

    static <T> Outcome<T> refused(Reason... reasons) {
        return new Refused<>(List.of(reasons));
    }

    <R> R fold(
            Function<? super T, ? extends R> done,
            Function<? super T, ? extends R> alreadyDone,
            Function<? super List<Reason>, ? extends R> refused);

    default <R> R fold(Function<? super T, ? extends R> done, Function<? super List<Reason>, ? extends R> refused) {
        return fold(done, done, refused);
    }

    default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
        return fold(value -> done(change.apply(value)), value -> alreadyDone(change.apply(value)), Outcome::refused);
    }

    default List<Reason> reasons() {
        return fold(value -> List.of(), reasons -> reasons);
    }
}
