package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.order.fitted.FittedParts;
import wainbook.pack.PackRow;

/** The parts that stand by their serials; what type a pack is was said when it was received. */
@ApplicationScoped
class FittedSerials implements FittedParts {

    private static final String PACK = "PACK-";

    @Override
    public List<Part> of(History history) {
        return StandingSerials.of(history).byLine().values().stream()
                .flatMap(entry -> StandingSerials.serial(entry).stream())
                .distinct()
                .map(serial -> new Part(
                        serial.part(),
                        serial.number(),
                        Optional.of(serial)
                                .filter(one -> one.part().startsWith(PACK))
                                .flatMap(one -> PackRow.known(one.number()))
                                .map(row -> row.packType)))
                .toList();
    }
}
