package wainbook.gate;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorRejected;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.StationSaying.Held;
import wainbook.works.signin.Passwords;

/** Signs a gate, or refuses it. At the gate of the intake survey, signing accepts the donor and refusing may reject it. */
@ApplicationScoped
public class SignOff {

    /** Where an accepted donor waits for the line. */
    public static final String YARD = "YARD";

    /** What is asked; {@code fingerprint} is that of the evidence the signer looked at. */
    public record ToSign(UUID id, String order, String stage, String fingerprint, String password) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return SignedOff.class;
        }
    }

    /** What is asked; the items named must be looked at again. */
    public record ToRefuse(
            UUID id,
            String order,
            String stage,
            String fingerprint,
            List<String> items,
            String reason,
            boolean rejectsDonor)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Refused.class;
        }
    }

    private final Ledger ledger;
    private final GateLook look;
    private final Passwords passwords;

    SignOff(Ledger ledger, GateLook look, Passwords passwords) {
        this.ledger = ledger;
        this.look = look;
        this.passwords = passwords;
    }

    public Outcome<Entry> sign(ToSign asked, Actor actor) {
        Optional<Reason> unsigned = passwords.against(actor.who(), asked.password());
        if (unsigned.isPresent()) {
            return Outcome.refused(unsigned.get());
        }
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> look.at(reading.of(order), asked.stage(), reading.moment())
                        .fold(rules -> sign(rules, asked), Decision::refuse));
    }

    private static Decision sign(GateRules rules, ToSign asked) {
        Subject order = Subject.workOrder(asked.order());
        List<Reason> against = new ArrayList<>(rules.against());
        String now = rules.gate().fingerprint();
        if (!now.equals(asked.fingerprint())) {
            against.add(Reason.of("gate.changedSinceSeen", Reason.WORKS_RULE, asked.order()));
        }
        if (!against.isEmpty()) {
            return Decision.refuse(against);
        }
        var binding = rules.gate().record().binding();
        Decision signed = Decision.say(
                order,
                new SignedOff(
                        asked.stage(),
                        binding.sheet(),
                        binding.revision(),
                        now,
                        rules.signer()
                                .competence(GateRules.COMPETENCE)
                                .map(held -> new Held(held.code(), held.level(), held.validTo()))));
        return rules.order().phase() == Phase.DONOR_RECEIVED
                ? signed.andSay(order, new DonorAccepted(now, new Place(java.util.Optional.empty(), YARD)))
                : signed;
    }

    public Outcome<Entry> refuse(ToRefuse asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> look.at(reading.of(order), asked.stage(), reading.moment())
                        .fold(rules -> refuse(rules, asked), Decision::refuse));
    }

    private static Decision refuse(GateRules rules, ToRefuse asked) {
        Subject order = Subject.workOrder(asked.order());
        var against = new ArrayList<Reason>();
        if (asked.reason().isBlank()) {
            against.add(Reason.of("gate.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        asked.items().stream()
                .filter(item -> rules.gate().record().item(item).isEmpty())
                .forEach(item -> against.add(Reason.of("gate.itemUnknown", Reason.WORKS_RULE, item)));
        boolean survey = rules.order().phase() == Phase.DONOR_RECEIVED;
        if (asked.rejectsDonor() && !survey) {
            against.add(Reason.of("gate.notADonor", Reason.WORKS_RULE, asked.order()));
        }
        if (!against.isEmpty()) {
            return Decision.refuse(against);
        }
        OrderSaying rejected = new DonorRejected(rules.gate().fingerprint(), asked.reason());
        Decision refused = Decision.say(
                order, new Refused(asked.stage(), rules.gate().fingerprint(), asked.items(), asked.reason()));
        return asked.rejectsDonor() ? refused.andSay(order, rejected) : refused;
    }
}
