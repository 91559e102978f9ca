package wainbook.quality.containment.doubt;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Worked;

/**
 * A reading as its entry keeps it, not judged yet.
 *
 * @param place number of the fastener or cell; 0 where the entry is one reading
 * @param failedThen whether it was outside its limits as it was read, and so passed nothing
 */
public record Found(
        Entry entry,
        int place,
        String stage,
        String item,
        Optional<String> joint,
        Gravity gravity,
        Optional<Value> value,
        boolean failedThen,
        Nature nature) {

    /** What sort of evidence it is. */
    public enum Nature {
        READING,
        PROOF_OF_DEAD,
        OTHER
    }

    /**
     * What was read and the limits it was judged by.
     *
     * @param strict whether a reading on its limit is outside
     */
    public record Value(
            String unit, BigDecimal reading, Optional<BigDecimal> lower, Optional<BigDecimal> upper, boolean strict) {

        boolean limited() {
            return lower.isPresent() || upper.isPresent();
        }
    }

    /** This reading as a containment keeps it. */
    Doubted judged(boolean voided, Sureness verdict, Ground ground, Optional<Worked> worked) {
        return new Doubted(
                entry.id(),
                entry.number(),
                place,
                entry.moment().at(),
                entry.moment().who(),
                stage,
                item,
                joint,
                gravity,
                value.map(Value::unit).orElse(""),
                value.map(Value::reading),
                value.flatMap(Value::lower),
                value.flatMap(Value::upper),
                value.map(Value::strict).orElse(false),
                voided,
                verdict,
                ground,
                worked);
    }
}
