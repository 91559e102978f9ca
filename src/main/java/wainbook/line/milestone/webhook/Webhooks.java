package wainbook.line.milestone.webhook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookEnded;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookSet;

/** The addresses that are told of milestones, as they stand; those ended are not among them. */
public record Webhooks(Map<Integer, WebhookSet> byNumber, int last) {

    public Webhooks {
        byNumber = Map.copyOf(byNumber);
    }

    public static Webhooks of(History works) {
        return works.folded(
                Webhooks.class,
                new Webhooks(Map.of(), 0),
                (webhooks, entry) -> entry.saying() instanceof WebhookSaying said ? webhooks.after(said) : webhooks);
    }

    private Webhooks after(WebhookSaying saying) {
        Map<Integer, WebhookSet> after = new LinkedHashMap<>(byNumber);
        if (saying instanceof WebhookSet said) {
            after.put(said.webhook(), said);
            return new Webhooks(after, Math.max(last, said.webhook()));
        }
        after.remove(((WebhookEnded) saying).webhook());
        return new Webhooks(after, last);
    }

    public Optional<WebhookSet> number(int webhook) {
        return Optional.ofNullable(byNumber.get(webhook));
    }

    public List<WebhookSet> all() {
        return byNumber.values().stream()
                .sorted((one, other) -> Integer.compare(one.webhook(), other.webhook()))
                .toList();
    }

    /** Numbers of those that are switched off. */
    List<Integer> off() {
        return all().stream()
                .filter(said -> !said.on())
                .map(WebhookSet::webhook)
                .toList();
    }

    /** Those that are on and want this one. */
    public List<WebhookSet> wanting(Milestone milestone) {
        return all().stream()
                .filter(said -> said.on() && said.milestones().contains(milestone))
                .toList();
    }
}
