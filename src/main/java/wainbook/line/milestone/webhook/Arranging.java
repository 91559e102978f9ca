package wainbook.line.milestone.webhook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
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
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookEnded;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookSet;

/** Arranges who is told of milestones. */
@ApplicationScoped
public class Arranging {

    /** @param webhook its number; absent for a new one */
    public record ToSet(UUID id, Optional<Integer> webhook, String address, List<Milestone> milestones, boolean on)
            implements Asked {
        public ToSet {
            address = address.strip();
            milestones = List.copyOf(milestones);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return WebhookSet.class;
        }
    }

    /** What is asked to end one. */
    public record ToEnd(UUID id, int webhook) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return WebhookEnded.class;
        }
    }

    private static final int MOST = 20;

    private final Ledger ledger;
    private final OverHttp http;
    private final Clock clock;

    Arranging(Ledger ledger, OverHttp http, Clock clock) {
        this.ledger = ledger;
        this.http = http;
        this.clock = clock;
    }

    public Outcome<Entry> set(ToSet asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Webhooks known = Webhooks.of(reading.of(Subject.works()));
            List<Reason> against = against(asked, known);
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(),
                            new WebhookSet(
                                    asked.webhook().orElse(known.last() + 1),
                                    asked.address(),
                                    asked.milestones(),
                                    asked.on()))
                    : Decision.refuse(against);
        });
    }

    private List<Reason> against(ToSet asked, Webhooks known) {
        var against = new ArrayList<Reason>();
        if (Address.read(asked.address(), http.allowed()).isEmpty()) {
            against.add(Reason.of("line.webhookAddress", Reason.WORKS_RULE).liftedAt("#address"));
        }
        if (asked.milestones().isEmpty()) {
            against.add(Reason.of("line.webhookNothing", Reason.WORKS_RULE).liftedAt("#milestones"));
        }
        asked.webhook()
                .filter(number -> known.number(number).isEmpty())
                .ifPresent(number -> against.add(notThere(number)));
        if (asked.webhook().isEmpty() && known.all().size() >= MOST) {
            against.add(Reason.of("line.webhooksMany", Reason.WORKS_RULE, MOST).liftedAt("/milestones/webhooks"));
        }
        return against;
    }

    public Outcome<Entry> end(ToEnd asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> Webhooks.of(reading.of(Subject.works()))
                        .number(asked.webhook())
                        .map(known -> Decision.say(Subject.works(), new WebhookEnded(asked.webhook())))
                        .orElseGet(() -> Decision.refuse(List.of(notThere(asked.webhook())))));
    }

    /** A new secret in place of any before; this is the one time it can be read. */
    public String secret(int webhook) {
        return QuarkusTransaction.joiningExisting().call(() -> Secret.make(webhook, clock.instant()));
    }

    /** Has a delivery tried again at the next round; nothing where it is not there, or was taken. */
    public void again(String delivery) {
        QuarkusTransaction.joiningExisting()
                .run(() -> Delivery.<Delivery>findByIdOptional(delivery)
                        .filter(row -> row.state != Delivery.State.DELIVERED)
                        .ifPresent(row -> row.again(clock.instant())));
    }

    private static Reason notThere(int number) {
        return Reason.of("line.webhookNotThere", Reason.WORKS_RULE, number).liftedAt("/milestones/webhooks");
    }
}
