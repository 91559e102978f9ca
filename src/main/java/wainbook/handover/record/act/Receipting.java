package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.OutsideNames;
import wainbook.handover.record.OutsideNames.Named;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.ReceiptMissing;
import wainbook.handover.record.RecordSaying.ReceiptSigned;
import wainbook.handover.record.Shown;
import wainbook.handover.record.Strokes;
import wainbook.handover.record.act.AtBay.Bay;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.works.signin.Passwords;

/** The receipt: signed by the operator's person, or why it is not, with a witness of the works. */
@ApplicationScoped
public class Receipting {

    /**
     * What is asked.
     *
     * @param content the fingerprint of what the receiver was shown
     * @param name and {@code firm} lie outside the ledger
     * @param strokes of the signature as JSON, see {@link Strokes}; empty where the name was typed instead
     * @param confirmed whether the typed name was said to stand for the signature
     */
    public record ToSign(
            UUID id,
            String order,
            String content,
            String name,
            String role,
            String firm,
            Manner manner,
            String strokes,
            boolean confirmed)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReceiptSigned.class;
        }
    }

    /** @param password of the witness, who is not who records it */
    public record ToMiss(
            UUID id, String order, String content, Absence absence, String reason, String witness, String password)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReceiptMissing.class;
        }
    }

    private final AtBay bays;
    private final OutsideNames names;
    private final Photographs files;
    private final Passwords passwords;

    Receipting(AtBay bays, OutsideNames names, Photographs files, Passwords passwords) {
        this.bays = bays;
        this.names = names;
        this.files = files;
        this.passwords = passwords;
    }

    public Outcome<Entry> sign(ToSign asked, Actor actor) {
        List<Reason> wrong = written(asked);
        if (!wrong.isEmpty()) {
            return Outcome.refused(wrong);
        }
        String hash = names.keep(asked.id(), asked.order(), List.of(new Named(asked.name(), asked.firm())))
                .get(0);
        Outcome<Entry> outcome = bays.always(asked, actor, bay -> {
            List<Reason> against = against(bay, asked.content());
            return against.isEmpty()
                    ? Decision.say(bay.history().subject(), signed(asked, hash, bay))
                    : Decision.refuse(against);
        });
        if (!outcome.reasons().isEmpty()) {
            names.forget(asked.id(), bays.history(asked.order()));
        }
        return outcome;
    }

    private static List<Reason> written(ToSign asked) {
        var wrong = new ArrayList<Reason>();
        Typed.words(asked.name(), "name").ifPresent(wrong::add);
        Typed.words(asked.role(), "role").ifPresent(wrong::add);
        Typed.words(asked.firm(), "firm").ifPresent(wrong::add);
        switch (asked.manner()) {
            case DRAWN -> {
                if (Strokes.read(asked.strokes()).filter(Strokes::isDrawn).isEmpty()) {
                    wrong.add(Reason.of("handover.recordNotDrawn", Reason.PRACTICE)
                            .liftedAt("#manner"));
                }
            }
            case TYPED -> {
                if (!asked.confirmed()) {
                    wrong.add(Reason.of("handover.recordNotConfirmed", Reason.PRACTICE)
                            .liftedAt("#confirmed"));
                }
            }
        }
        return wrong;
    }

    private static List<Reason> against(Bay bay, String content) {
        var against = new ArrayList<>(bay.rules().againstReceipt());
        if (!bay.rules().shown().fingerprint().equals(content)) {
            against.add(Reason.of("handover.recordChangedMeanwhile", Reason.WORKS_RULE)
                    .liftedAt(bay.rules().path() + "/receipt"));
        }
        return against;
    }

    private ReceiptSigned signed(ToSign asked, String hash, Bay bay) {
        Shown shown = bay.rules().shown();
        Optional<EvidenceFile> drawing = asked.manner() == Manner.DRAWN
                ? Strokes.read(asked.strokes()).map(strokes -> files.keep(strokes.svg(), "image/svg+xml"))
                : Optional.empty();
        return new ReceiptSigned(
                bay.record().receipts().size() + 1,
                files.keep(shown.bytes(), "text/plain"),
                shown.parts(),
                bay.record().outsider(0, hash),
                asked.role(),
                asked.manner(),
                drawing);
    }

    public Outcome<Entry> miss(ToMiss asked, Actor actor) {
        var wrong = new ArrayList<Reason>();
        Typed.text(asked.reason(), "reason").ifPresent(wrong::add);
        if (bays.person(asked.witness()).isEmpty() || asked.witness().equals(actor.who())) {
            wrong.add(Reason.of("handover.recordWitness", Reason.WORKS_RULE).liftedAt("#witness"));
        } else if (!passwords.areOf(asked.witness(), asked.password())) {
            wrong.add(Reason.of("handover.recordWitnessPassword", Reason.WORKS_RULE)
                    .liftedAt("#password"));
        }
        if (!wrong.isEmpty()) {
            return Outcome.refused(wrong);
        }
        return bays.always(asked, actor, bay -> {
            List<Reason> against = against(bay, asked.content());
            Shown shown = bay.rules().shown();
            return bay.say(
                    against,
                    () -> new ReceiptMissing(
                            bay.record().receipts().size() + 1,
                            files.keep(shown.bytes(), "text/plain"),
                            shown.parts(),
                            asked.absence(),
                            asked.reason(),
                            asked.witness()));
        });
    }
}
