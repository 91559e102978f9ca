package wainbook.gate.past;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;

/**
 * A hold from when it was put on until it was released.
 *
 * @param to empty while it is in force
 */
public record HoldSpell(int hold, HoldKind kind, List<Stops> stops, Instant from, Optional<Instant> to) {

    public HoldSpell {
        stops = List.copyOf(stops);
    }

    public boolean stopsWork() {
        return stops.contains(Stops.WORK);
    }

    HoldSpell released(Instant at) {
        return new HoldSpell(hold, kind, stops, from, to.or(() -> Optional.of(at)));
    }
}
