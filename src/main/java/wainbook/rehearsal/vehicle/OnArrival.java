package wainbook.rehearsal.vehicle;

import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.WorkOrder;
import wainbook.order.hold.Holding;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.act.Settling;
import wainbook.works.Role;

/**
 * A vehicle that came back: what holds it since its former record, or for a campaign, is looked at when it is there. So the line of
 * the demonstration goes on.
 */
final class OnArrival {

    private final AtVehicle at;

    OnArrival(AtVehicle at) {
        this.at = at;
    }

    void lookedAt() {
        at.vehicle().earlierOrder().ifPresent(former -> {
            at.pass(at.dice.between(8.0, 20.0));
            WorkOrder.of(at.acts.ledger.history(Subject.workOrder(former))).orElseThrow().holds().stream()
                    .filter(held -> held.kindOfHold() == HoldKind.QUALITY)
                    .forEach(held -> release(former, held));
            at.acts.campaigns.open().forEach(campaign -> decide(campaign, former));
        });
    }

    private void release(String former, Held held) {
        at.done(
                at.acts.holding.release(
                        new Holding.ToRelease(
                                at.dice.id(),
                                former,
                                held.hold(),
                                "It is here: water in the plug of the pack heater, dried; insulation is measured again at its stage"),
                        at.inOffice(at.crew.anyone(Role.QUALITY_ENGINEER, at.dice))),
                "release of the former hold");
    }

    private void decide(Campaign campaign, String former) {
        Optional<InCampaign> open = Stream.of(at.order, former)
                .flatMap(order -> campaign.vehicle(order).stream())
                .findFirst()
                .filter(one -> at.acts.campaigns.progress(one).standing().open())
                .filter(one -> one.reworkOrder().isEmpty());
        open.ifPresent(one -> at.done(
                at.acts.settling.settle(
                        new Settling.ToSettle(
                                at.dice.id(),
                                campaign.number(),
                                one.order(),
                                End.NOT_NEEDED,
                                "Looked at on arrival: every joint with this sealant is hard and tight",
                                Optional.empty(),
                                Optional.empty()),
                        at.inOffice(at.crew.anyone(Role.QUALITY_ENGINEER, at.dice))),
                "end of the campaign for it"));
    }
}
