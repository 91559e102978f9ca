package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.order.returning.BroughtAlong;
import wainbook.station.serial.BroughtSaying.PartBrought;

/** A vehicle comes back with the parts whose serials stand on its record. */
@ApplicationScoped
class PartsBrought implements BroughtAlong {

    @Override
    public List<Saying> of(History earlier) {
        return StandingSerials.of(earlier).all().stream()
                .<Saying>map(serial -> new PartBrought(serial.part(), serial.number()))
                .toList();
    }
}
