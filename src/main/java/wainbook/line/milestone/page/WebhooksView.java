package wainbook.line.milestone.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.webhook.Delivery;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookSet;
import wainbook.line.milestone.webhook.Webhooks;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The addresses that are told of milestones, and what came of it lately.
 *
 * @param chosen milestones ticked in the form
 * @param made the secret that was made just now, readable this once
 */
public record WebhooksView(
        Webhooks webhooks,
        List<Delivery> deliveries,
        long waiting,
        long givenUp,
        Filled filled,
        List<String> chosen,
        Optional<Made> made,
        boolean mayArrange) {

    /** A secret in full. */
    public record Made(int webhook, String secret) {}

    public String state() {
        return givenUp > 0
                ? Words.of("line.webhooksGivenUp", givenUp)
                : webhooks.all().isEmpty() ? Words.of("line.webhooksNone") : Words.of("line.webhooksWaiting", waiting);
    }

    public List<Option> milestones() {
        return Arrays.stream(Milestone.values())
                .map(value -> new Option(value.name(), MilestonesView.word(value)))
                .toList();
    }

    public boolean ticked(String milestone) {
        return chosen.contains(milestone);
    }

    public String wants(WebhookSet one) {
        return one.milestones().stream().map(MilestonesView::word).collect(Collectors.joining(", "));
    }

    public String milestone(Delivery one) {
        return MilestonesView.word(one.milestone);
    }

    public String state(Delivery one) {
        return Words.of("line.deliveryState." + one.state.name());
    }

    public boolean done(Delivery one) {
        return one.state == Delivery.State.DELIVERED;
    }

    public boolean lost(Delivery one) {
        return one.state == Delivery.State.GIVEN_UP;
    }

    /** What failed at the last try, and what to do. */
    public String fault(Delivery one) {
        return one.fault == null ? "" : Words.of("line.deliveryFault." + one.fault.name(), answered(one));
    }

    private static int answered(Delivery one) {
        return one.answered == null ? 0 : one.answered;
    }

    public UUID form() {
        return UUID.randomUUID();
    }

    /** The milestones of one, for the form that switches it. */
    public List<String> names(WebhookSet one) {
        return one.milestones().stream().map(Milestone::name).toList();
    }
}
