package wainbook.safety.stop;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.hold.Holding;
import wainbook.page.Words;

/** Stops of places. A stop of a vehicle is among the matters as the hold that it puts on. */
@ApplicationScoped
class StopMatters implements Matters {

    private final Ledger ledger;

    StopMatters(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return Stops.of(ledger.history(Subject.works())).open().stream()
                .map(StopMatters::matter)
                .toList();
    }

    private static OpenMatter matter(Stop stop) {
        return new OpenMatter(
                Sort.SAFETY_STOP,
                "",
                Words.of("safety.stopNumber", stop.number()),
                stop.said().station(),
                stop.said().words().orElseGet(() -> Words.of("safety.noWords")),
                stop.stopped().moment().at(),
                Holding.mayRelease(HoldKind.SAFETY).stream()
                        .sorted()
                        .map(Owner::of)
                        .toList(),
                Due.open(),
                Words.of("safety.barsPlace"),
                stop.path());
    }
}
