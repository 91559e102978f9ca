package wainbook.isolation.step;

import java.math.BigDecimal;
import java.time.Instant;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;

/** What a step is taken in: the isolation as it stands, the facts of the day, and who takes it. */
public record Situation(Isolation isolation, Facts facts, String who) {

    IsolationSaying.Level level() {
        return facts.person(who).copied();
    }

    /** An instrument that nobody registered is copied as one that is good for nothing, and refused by the rules. */
    IsolationSaying.Used used(String code) {
        return facts.instrument(code)
                .map(Instrument::used)
                .orElseGet(() -> new IsolationSaying.Used(code, Instrument.Sort.OTHER, BigDecimal.ZERO, Instant.EPOCH));
    }
}
