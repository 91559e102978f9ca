package wainbook.station.judgement;

import java.util.List;
import java.util.function.Function;
import wainbook.act.Reason;
import wainbook.station.StationSaying;

/** What came of a reply: something to say, or what is missing in it. */
public sealed interface Judged {

    /** The reply answers what was asked. */
    record Answered(StationSaying saying) implements Judged {}

    /** The reply cannot be judged; each fault names the field it is about, {@code #boltsNm}, as where it is lifted. */
    record Faulty(List<Reason> faults) implements Judged {}

    static Judged answered(StationSaying saying) {
        return new Answered(saying);
    }

    static Judged faulty(String field, String key, Object... arguments) {
        return new Faulty(List.of(Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt("#" + field)));
    }

    default <R> R fold(Function<StationSaying, R> answered, Function<List<Reason>, R> faulty) {
        return this instanceof Answered said ? answered.apply(said.saying()) : faulty.apply(((Faulty) this).faults());
    }
}
