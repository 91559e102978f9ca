package wainbook.engineering;

import java.util.List;
import java.util.Optional;

/**
 * A result with everything that a reader needs to check it by hand.
 *
 * @param decision absent where nothing is judged
 * @param because one sentence in plain words
 */
public record Working<R extends Record>(
        R results,
        Optional<Decision> decision,
        Sentence because,
        List<Step> steps,
        List<Source> sources,
        List<Sentence> cautions) {

    public Working {
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
        cautions = List.copyOf(cautions);
    }

    public Verdict verdict() {
        return decision.map(Decision::verdict).orElse(Verdict.NONE);
    }

    boolean finite() {
        return Faults.finite(results)
                && Faults.finite(decision)
                && steps.stream().allMatch(step -> Double.isFinite(step.value()));
    }
}
