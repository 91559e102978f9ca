package wainbook.line.milestone.webhook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.logging.Logger;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.milestone.webhook.Delivery.Fault;
import wainbook.line.milestone.webhook.Delivery.Outgone;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookSet;

/**
 * One round of deliveries: whatever is due is sent, one after another, and what came of it is noted. What was sent and then not noted,
 * because the program ended in between, is sent again: at least once, never surely only once.
 */
@ApplicationScoped
public class Round {

    private static final Logger LOG = Logger.getLogger(Round.class);
    private static final int MOST = 50;

    private final Ledger ledger;
    private final Sending sending;
    private final ObjectMapper json = new ObjectMapper();

    Round(Ledger ledger, Sending sending) {
        this.ledger = ledger;
        this.sending = sending;
    }

    /** @return how many were tried */
    public synchronized int at(Instant now) {
        Webhooks webhooks =
                QuarkusTransaction.joiningExisting().call(() -> Webhooks.of(ledger.history(Subject.works())));
        List<Delivery> due = QuarkusTransaction.requiringNew().call(() -> Delivery.due(now, webhooks.off(), MOST));
        for (Delivery row : due) {
            Outgone outgone = webhooks.number(row.webhook)
                    .map(said -> tried(said, row, now))
                    .orElse(Outgone.failed(Fault.ENDED));
            QuarkusTransaction.requiringNew()
                    .run(() -> Delivery.<Delivery>findById(row.id).note(outgone, now));
        }
        return due.size();
    }

    private Outgone tried(WebhookSet webhook, Delivery row, Instant now) {
        Optional<String> secret = QuarkusTransaction.requiringNew().call(() -> Secret.of(row.webhook));
        if (secret.isEmpty()) {
            return Outgone.failed(Fault.NO_SECRET);
        }
        try {
            return sending.send(new Sending.Message(
                    webhook.address(), secret.get(), row.entry.toString(), now.toString(), body(row)));
        } catch (RuntimeException unforeseen) {
            LOG.warn("Telling a milestone failed in a way that was not foreseen; it is tried again.", unforeseen);
            return Outgone.failed(Fault.NOT_KNOWN);
        }
    }

    /** No personal data: an order, what it reached, and when. */
    private String body(Delivery row) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("id", row.entry.toString());
        body.put("order", row.workOrder);
        body.put("milestone", row.milestone.name());
        body.put("at", row.reachedAt.toString());
        body.put("entry", row.entryNumber);
        try {
            return json.writeValueAsString(body);
        } catch (JsonProcessingException plainMap) {
            throw new IllegalStateException(plainMap);
        }
    }
}
