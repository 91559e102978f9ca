package wainbook.gate;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.station.StationSaying.Held;

/** What is said at a gate. */
public sealed interface GateSaying extends Saying {

    /**
     * The evidence of a stage was examined and found complete and within limits.
     *
     * @param fingerprint of the evidence as it stood
     * @param held the signer's competence as it stood
     */
    @Kind("gate.signedOff/1")
    record SignedOff(String stage, String sheet, int revision, String fingerprint, Optional<Held> held)
            implements GateSaying {}

    /** The gate was refused; the items named must be looked at again. */
    @Kind("gate.refused/1")
    record Refused(String stage, String fingerprint, List<String> items, String reason) implements GateSaying {
        public Refused {
            items = List.copyOf(items);
        }
    }
}
