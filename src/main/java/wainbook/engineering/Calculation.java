package wainbook.engineering;

import java.util.List;
import java.util.Optional;

/**
 * One thing the works decides by figures. Inputs and results are records whose components carry their units in their names;
 * {@link Domain}, {@link Preset} and {@link ExactlyOne} on the inputs say what a field may hold, so that a page, the API and
 * a room that calls {@link #of} are all told the same.
 *
 * @param <I> the inputs
 * @param <R> the results
 */
public interface Calculation<I extends Record, R extends Record> {

    /** The stable name, as it stands in addresses and message keys: {@code isolation-voltmeter}. */
    String name();

    /** The key of its title. */
    default String title() {
        return "engineering." + name() + ".title";
    }

    /** Where formula, limit and decision rule come from. */
    List<Source> sources();

    /** What to heed whatever the figures are; said before the first one is asked, and again with the result. */
    default List<Sentence> cautions() {
        return List.of();
    }

    /** The calculation itself, for inputs that are known to be in their domain. Callers use {@link #of}. */
    Answer<R> work(I inputs);

    /** An answer that judges nothing. */
    default Answer<R> found(R results, Sentence because, Step... steps) {
        return Answer.worked(new Working<>(results, Optional.empty(), because, List.of(steps), sources(), cautions()));
    }

    /** An answer that says whether something keeps to its limit; the sentence is the verdict's own. */
    default Answer<R> judged(R results, Decision decision, List<?> figures, Step... steps) {
        Sentence because = decision.because(name(), figures.toArray());
        return Answer.worked(
                new Working<>(results, Optional.of(decision), because, List.of(steps), sources(), cautions()));
    }

    /** Faults of fields come before impossible readings, and a result that is no finite number is never handed out. */
    default Answer<R> of(I inputs) {
        List<Fault> faults = Faults.of(inputs);
        return faults.isEmpty() ? work(inputs).finite() : Answer.faulty(faults);
    }
}
