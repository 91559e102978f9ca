package wainbook.predicate;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a condition says about the facts in hand. Unknown facts never turn into a no. */
public sealed interface Answer {

    record Yes() implements Answer {
        @Override
        public <R> R fold(Supplier<R> yes, Supplier<R> no, Function<? super Ask, R> ask) {
            return yes.get();
        }
    }

    record No() implements Answer {
        @Override
        public <R> R fold(Supplier<R> yes, Supplier<R> no, Function<? super Ask, R> ask) {
            return no.get();
        }
    }

    /**
     * It cannot be decided, so a person is asked.
     *
     * @param missing the names of the facts that would decide it, sorted; empty when the condition itself failed
     * @param trouble what went wrong in working it out, a division by zero for example
     */
    record Ask(List<String> missing, Optional<String> trouble) implements Answer {
        public Ask {
            missing = missing.stream().sorted().distinct().toList();
            if (missing.isEmpty() == trouble.isEmpty()) {
                throw new IllegalArgumentException("to ask names either missing facts or a trouble");
            }
        }

        @Override
        public <R> R fold(Supplier<R> yes, Supplier<R> no, Function<? super Ask, R> ask) {
            return ask.apply(this);
        }
    }

    static Answer of(boolean truth) {
        return truth ? new Yes() : new No();
    }

    static Answer missing(List<String> names) {
        return new Ask(names, Optional.empty());
    }

    static Answer trouble(String what) {
        return new Ask(List.of(), Optional.of(what));
    }

    <R> R fold(Supplier<R> yes, Supplier<R> no, Function<? super Ask, R> ask);

    default boolean isYes() {
        return fold(() -> true, () -> false, ask -> false);
    }

    default boolean isNo() {
        return fold(() -> false, () -> true, ask -> false);
    }
}
