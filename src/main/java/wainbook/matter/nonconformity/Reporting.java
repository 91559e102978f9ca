package wainbook.matter.nonconformity;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.NoConcession;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.WorkOrder;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.sheet.CheckItem;

/** Reports that something is wrong: opens a nonconformity on request. Anybody at the vehicle may. */
@ApplicationScoped
public class Reporting {

    /** What is asked; {@code item} is {@code sheet/item} where it is about one. */
    public record ToReport(UUID id, String order, Optional<String> item, String what) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return NonconformityOpened.class;
        }
    }

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    private final Ledger ledger;
    private final Releases releases;

    Reporting(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    public Outcome<Entry> report(ToReport asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            Optional<WorkOrder> known = WorkOrder.of(reading.of(order));
            var against = new ArrayList<Reason>();
            if (known.isEmpty()) {
                against.add(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            if (asked.what().isBlank() || asked.what().length() > 2000) {
                against.add(Reason.of("matter.whatMissing", Reason.WORKS_RULE).liftedAt("#what"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            order,
                            new NonconformityOpened(
                                    Nonconformities.of(reading.of(order)).next(),
                                    known.orElseThrow().stage().orElse("–"),
                                    asked.item(),
                                    Cause.REPORTED,
                                    asked.what(),
                                    asked.item().flatMap(item -> noConcession(known.orElseThrow(), item))))
                    : Decision.refuse(against);
        });
    }

    /** What the item says of itself, in the revision that the vehicle is bound to; before that in the one in force. */
    private Optional<NoConcession> noConcession(WorkOrder order, String line) {
        String[] sheetAndItem = line.split("/", 2);
        if (sheetAndItem.length < 2 || !sheetAndItem[0].matches(CODE)) {
            return Optional.empty();
        }
        return order.bindings().values().stream()
                .filter(binding -> binding.sheet().equals(sheetAndItem[0]))
                .map(binding -> releases.sheet(binding.sheet(), binding.revision()))
                .findFirst()
                .or(() -> releases.sheetInForce(sheetAndItem[0]).map(Released::sheet))
                .flatMap(sheet -> sheet.item(sheetAndItem[1]))
                .flatMap(Reporting::noConcession);
    }

    /** A concession would settle the item unmeasured, and with it a legal limit that it asks for. */
    private static Optional<NoConcession> noConcession(CheckItem item) {
        return item.noConcession()
                .map(NoConcession::of)
                .or(() -> item.asks().legallyLimited() ? Optional.of(NoConcession.LEGAL_LIMIT) : Optional.empty());
    }
}
