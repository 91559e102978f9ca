package wainbook.engineering;

import java.util.List;
import java.util.function.Function;

/** What a calculation says. Callers use {@link #fold}, so that a new case breaks the build wherever it is not answered. */
public sealed interface Answer<R extends Record> {

    /** The figures gave a result. */
    record Worked<R extends Record>(Working<R> working) implements Answer<R> {
        @Override
        public <T> T fold(
                Function<? super Working<R>, ? extends T> worked,
                Function<? super List<Fault>, ? extends T> faulty,
                Function<? super Refusal, ? extends T> impossible) {
            return worked.apply(working);
        }
    }

    /** Fields are missing or outside what they may hold; every one is named. */
    record Faulty<R extends Record>(List<Fault> faults) implements Answer<R> {
        public Faulty {
            if (faults.isEmpty()) {
                throw new IllegalArgumentException("faulty inputs name at least one fault");
            }
            faults = List.copyOf(faults);
        }

        @Override
        public <T> T fold(
                Function<? super Working<R>, ? extends T> worked,
                Function<? super List<Fault>, ? extends T> faulty,
                Function<? super Refusal, ? extends T> impossible) {
            return faulty.apply(faults);
        }
    }

    /** Each field is well, but together they cannot come from a real measurement. */
    record Impossible<R extends Record>(Refusal refusal) implements Answer<R> {
        @Override
        public <T> T fold(
                Function<? super Working<R>, ? extends T> worked,
                Function<? super List<Fault>, ? extends T> faulty,
                Function<? super Refusal, ? extends T> impossible) {
            return impossible.apply(refusal);
        }
    }

    static <R extends Record> Answer<R> worked(Working<R> working) {
        return new Worked<>(working);
    }

    static <R extends Record> Answer<R> faulty(List<Fault> faults) {
        return new Faulty<>(faults);
    }

    static <R extends Record> Answer<R> impossible(String key, Object... figures) {
        return new Impossible<>(Refusal.of(key, figures));
    }

    <T> T fold(
            Function<? super Working<R>, ? extends T> worked,
            Function<? super List<Fault>, ? extends T> faulty,
            Function<? super Refusal, ? extends T> impossible);

    /** This answer, unless figures of an absurd size overflowed on the way. */
    default Answer<R> finite() {
        return fold(
                working -> working.finite() ? this : Answer.impossible("beyond-reckoning"),
                faults -> this,
                refusal -> this);
    }
}
