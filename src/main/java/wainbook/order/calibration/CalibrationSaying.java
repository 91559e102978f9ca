package wainbook.order.calibration;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What an order's stream hears of the calibration that is asked for. Each entry says the whole anew; what stood before stays. */
public sealed interface CalibrationSaying extends Saying {

    /** @param wishes empty where nothing is asked any longer */
    @Kind("order.calibrationAsked/1")
    record CalibrationAsked(List<Wish> wishes, Optional<SameTime> sameTime) implements CalibrationSaying {
        public CalibrationAsked {
            wishes = List.copyOf(wishes);
        }
    }
}
