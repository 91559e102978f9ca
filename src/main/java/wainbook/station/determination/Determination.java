package wainbook.station.determination;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.act.Reason;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Judgement;

/** What comes of the readings. */
public sealed interface Determination {

    /**
     * A value, or what stands in its place, with what was decided.
     *
     * @param inputs of the calculation, by its own names, so that its page can be opened with them
     */
    record Determined(
            List<Figure> inputs,
            Optional<BigDecimal> value,
            boolean openEnded,
            Optional<BigDecimal> uncertainty,
            List<Figure> results,
            List<Judgement> judgements)
            implements Determination {}

    /** The readings are not judged: one is missing, or they cannot come from a sound measurement. */
    record NotJudged(Reason reason) implements Determination {}

    static Determination not(String field, String key, Object... arguments) {
        return new NotJudged(
                Reason.of("station." + key, Reason.WORKS_RULE, arguments).liftedAt("#" + field));
    }

    default <T> T fold(Function<Determined, T> determined, Function<Reason, T> not) {
        return this instanceof Determined found ? determined.apply(found) : not.apply(((NotJudged) this).reason());
    }
}
