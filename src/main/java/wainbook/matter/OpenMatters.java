package wainbook.matter;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import wainbook.ledger.Ledger;

/** Everything open over all work orders: what somebody stands still for first, then the oldest. */
@ApplicationScoped
public class OpenMatters {

    private final List<Matters> rooms;
    private final Ledger ledger;

    OpenMatters(@All List<Matters> rooms, Ledger ledger) {
        this.rooms = rooms;
        this.ledger = ledger;
    }

    public List<OpenMatter> all(Instant now) {
        return ledger.drawing(() -> rooms.stream()
                .flatMap(room -> room.open(now).stream())
                .sorted(Comparator.comparing((OpenMatter matter) -> !matter.stopsSomebody())
                        .thenComparing(OpenMatter::since))
                .toList());
    }
}
