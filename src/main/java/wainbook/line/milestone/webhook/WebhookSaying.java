package wainbook.line.milestone.webhook;

import java.util.List;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.line.milestone.Milestone;

/** What the works' stream hears of addresses that are told of milestones. The secret is never said here. */
public sealed interface WebhookSaying extends Saying {

    /** @param webhook its number, from 1; said anew with another address, other milestones, or off */
    @Kind("line.webhookSet/1")
    record WebhookSet(int webhook, String address, List<Milestone> milestones, boolean on) implements WebhookSaying {
        public WebhookSet {
            milestones = List.copyOf(milestones);
        }
    }

    @Kind("line.webhookEnded/1")
    record WebhookEnded(int webhook) implements WebhookSaying {}
}
