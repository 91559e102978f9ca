package wainbook.gate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.gate.Gate.Standing;
import wainbook.gate.specified.AsSpecified;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.station.ItemState;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/**
 * All rules that a signature at a gate stands under. Evaluated all, shown all.
 *
 * @param heldByRule what holds that stand by rule give against signing
 */
public record GateRules(
        History history,
        WorkOrder order,
        Gate gate,
        Person signer,
        LocalDate today,
        AsSpecified specified,
        List<Reason> heldByRule) {

    public GateRules {
        heldByRule = List.copyOf(heldByRule);
    }

    /** The competence to sign gates; items that ask for it are the inspector's own and do not bar signing. */
    public static final String COMPETENCE = "gate-inspection";

    private static final String OWN_WORK = "ISO 9001:2015 8.6 (clause from memory)";

    public List<Reason> against() {
        var against = new ArrayList<Reason>();
        String vehicle = "/orders/" + order.number();
        if (!order.stage().equals(Optional.of(gate.record().stage()))) {
            against.add(Reason.of(
                    "gate.notAtStage",
                    Reason.WORKS_RULE,
                    order.number(),
                    gate.record().stage()));
        }
        if (gate.standing() == Standing.SIGNED) {
            against.add(Reason.of(
                    "gate.signedAlready", Reason.WORKS_RULE, gate.record().stage()));
        }
        CompetenceRule.against(signer, COMPETENCE, today).ifPresent(against::add);
        long own = OwnWork.count(history, gate.record(), signer.number());
        if (own > 0) {
            against.add(Reason.of("gate.ownWork", OWN_WORK, own));
        }
        gate.refused().ifPresent(refusal -> refusedItems(refusal, against));
        for (ItemState open : gate.record().unsettled()) {
            against.add(Reason.of(
                            "gate.itemOpen",
                            Reason.WORKS_RULE,
                            open.key(),
                            open.item().title())
                    .liftedAt("/station/" + order.number() + "?item=" + open.key()));
        }
        Nonconformities.of(history)
                .awaitingDisposition()
                .forEach(open -> against.add(Reason.of(
                                "gate.nonconformityOpen",
                                Reason.WORKS_RULE,
                                open.number(),
                                open.opened().what())
                        .liftedAt(vehicle + "#matters")));
        order.holdsThatStop(Stops.SIGN)
                .forEach(hold -> against.add(Reason.of("gate.held", Reason.WORKS_RULE, hold.hold(), hold.reason())
                        .liftedAt(vehicle + "#holds")));
        against.addAll(heldByRule);
        against.addAll(specified.against());
        return against;
    }

    /** What a refusal named must be on record anew: looking a second time at the same entry is not putting it right. */
    private void refusedItems(Entry refusal, List<Reason> against) {
        for (String item : ((GateSaying.Refused) refusal.saying()).items()) {
            boolean anew = gate.record()
                    .item(item)
                    .flatMap(ItemState::passing)
                    .filter(entry -> entry.number() > refusal.number())
                    .isPresent();
            if (!anew) {
                against.add(Reason.of("gate.itemRefused", Reason.WORKS_RULE, item)
                        .liftedAt("/station/" + order.number() + "?item=" + item));
            }
        }
    }
}
