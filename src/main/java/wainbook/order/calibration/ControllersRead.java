package wainbook.order.calibration;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.process.calibration.Setting;

/** What was read out of a vehicle's control units: answered by the room that records it. */
public interface ControllersRead {

    /**
     * What stands on record now.
     *
     * @param calibration its name, code and revision, as it was read
     * @param file the first digits of the file's SHA-256, as they were read
     */
    record Read(Optional<String> calibration, Optional<String> file, Map<Setting, BigDecimal> values) {
        public Read {
            values = Map.copyOf(values);
        }

        public Optional<BigDecimal> value(Setting setting) {
            return Optional.ofNullable(values.get(setting));
        }
    }

    Read of(History history);
}
