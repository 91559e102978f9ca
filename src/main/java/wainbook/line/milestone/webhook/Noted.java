package wainbook.line.milestone.webhook;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.ToTell;

/** Notes each milestone for each address that was on at the time of its entry and wanted it. */
@ApplicationScoped
class Noted implements ToTell {

    private final Ledger ledger;

    Noted(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void of(Milestone milestone, Entry reached) {
        Webhooks then = Webhooks.of(
                ledger.history(Subject.works()).upTo(reached.moment().at()));
        then.wanting(milestone).forEach(said -> {
            String id = Delivery.id(reached.id(), said.webhook());
            if (Delivery.findById(id) == null) {
                note(id, said.webhook(), milestone, reached);
            }
        });
    }

    private static void note(String id, int webhook, Milestone milestone, Entry reached) {
        var row = new Delivery();
        row.id = id;
        row.webhook = webhook;
        row.workOrder = reached.subject().code();
        row.milestone = milestone;
        row.entry = reached.id();
        row.entryNumber = reached.number();
        row.reachedAt = reached.moment().at();
        row.state = Delivery.State.WAITING;
        row.nextAt = reached.moment().at();
        row.persist();
    }
}
