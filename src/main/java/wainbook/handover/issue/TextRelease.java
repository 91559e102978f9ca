package wainbook.handover.issue;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.TextReleased;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;

/** Releases the works' own text of a document; it has to be fillable from the vehicle that it was tried on. */
@ApplicationScoped
public class TextRelease {

    private static final int LONGEST = 20_000;

    /**
     * What is asked.
     *
     * @param basedOn the revision that was read and changed
     * @param example the order it is tried on
     */
    public record ToRelease(UUID id, String document, int basedOn, String text, String example) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return TextReleased.class;
        }
    }

    private final Ledger ledger;
    private final Figures figures;

    TextRelease(Ledger ledger, Figures figures) {
        this.ledger = ledger;
        this.figures = figures;
    }

    public Outcome<Entry> release(ToRelease asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private Decision decide(ToRelease asked, Reading reading) {
        Optional<Template> known = Templates.after(reading.of(Subject.works())).stream()
                .filter(template -> template.code().equals(asked.document()))
                .findFirst();
        if (known.isEmpty()) {
            return Decision.refuse(Reason.of("handover.noSuchText", Reason.WORKS_RULE, asked.document()));
        }
        var against = new ArrayList<Reason>();
        if (known.get().revision() != asked.basedOn()) {
            against.add(Reason.of(
                    "handover.textChangedMeanwhile",
                    Reason.WORKS_RULE,
                    known.get().revision()));
        }
        if (asked.text().isBlank() || asked.text().length() > LONGEST) {
            against.add(
                    Reason.of("handover.textLength", Reason.WORKS_RULE, LONGEST).liftedAt("#text"));
        }
        tried(asked.text(), asked.example(), reading).fold(html -> true, against::addAll);
        return against.isEmpty()
                ? Decision.say(
                        Subject.works(),
                        new TextReleased(asked.document(), known.get().revision() + 1, asked.text()))
                : Decision.refuse(against);
    }

    private Outcome<String> tried(String text, String example, Reading reading) {
        return tried(text, example, reading.moment().at());
    }

    /** How a text reads for a vehicle. */
    public Outcome<String> tried(String text, String example, Instant now) {
        if (!example.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            return Outcome.refused(noExample(example));
        }
        History history = ledger.history(Subject.workOrder(example));
        return WorkOrder.of(history)
                .map(order -> Filling.html(text, figures.of(history, order, now)))
                .orElseGet(() -> Outcome.refused(noExample(example)));
    }

    private static Reason noExample(String example) {
        return Reason.of("handover.noExample", Reason.WORKS_RULE, example).liftedAt("#example");
    }
}
