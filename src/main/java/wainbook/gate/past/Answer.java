package wainbook.gate.past;

import java.time.Instant;
import java.util.Optional;

/**
 * A gate was looked at: signed or refused.
 *
 * @param evidence the last result of the stage before it
 * @param settled the last that settled anything of the stage before it: a result, work put off, a nonconformity decided
 * @param changed the first after it that changed the evidence of the stage, so that a signature no longer holds
 */
public record Answer(
        String stage,
        Instant at,
        boolean signed,
        Optional<Instant> evidence,
        Optional<Instant> settled,
        Optional<Instant> changed) {

    Answer changed(Instant when) {
        return changed.isPresent() ? this : new Answer(stage, at, signed, evidence, settled, Optional.of(when));
    }
}
