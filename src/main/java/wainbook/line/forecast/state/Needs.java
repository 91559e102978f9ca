package wainbook.line.forecast.state;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.forecast.past.Cures;

/**
 * What the stages of a vehicle need besides work.
 *
 * @param parts that are missing
 * @param cures what has to cure, by stage
 */
public record Needs(List<AwaitedPart> parts, Map<String, Cures> cures) {

    public static final Needs NONE = new Needs(List.of(), Map.of());

    public Needs {
        parts = List.copyOf(parts);
        cures = Map.copyOf(cures);
    }

    /** The part that a stage waits for longest. */
    public Optional<AwaitedPart> latest(String stage) {
        return parts.stream()
                .filter(part -> part.stage().equals(stage))
                .max(Comparator.comparing(AwaitedPart::expectedOn).thenComparing(AwaitedPart::number));
    }

    public Needs without(int part) {
        return new Needs(parts.stream().filter(one -> one.number() != part).toList(), cures);
    }

    /**
     * The same visit with what it has to wait for.
     *
     * @param done all its items are settled: nothing is missing for them
     */
    Visit heeded(Visit visit, TheLineNow.Post post, Calendar calendar, boolean done) {
        if (done) {
            return visit;
        }
        Cures curing = cures.getOrDefault(post.stage(), Cures.NONE);
        Visit cured = curing.runsUntil()
                .map(until -> visit.cured(calendar.minute(until)))
                .orElse(visit)
                .withCuring(curing.aheadMinutes());
        return latest(post.stage())
                .map(part -> cured.notBefore(calendar.workFrom(part.expectedOn(), post.stations())))
                .orElse(cured);
    }
}
